import { useRef } from "react";
import { Announcer } from "./Announcer.tsx";
import { DesignBar } from "./DesignBar.tsx";
import { Figure } from "./Figure.tsx";
import { Glance } from "./Glance.tsx";
import type { HeadlineFigure } from "./headlineFigures.ts";
import { Sureness } from "./Sureness.tsx";
import { useComparison } from "./useComparison.ts";
import { useHeadlineAnswer } from "./useHeadlineAnswer.ts";
import { Words } from "./Words.tsx";
import "./headline.css";

interface Props {
  onRetry(): void;
  /** Breaks the full answer off, and takes it up again. */
  onStop(): void;
  onGoOn(): void;
}

/** The strip under the top bar: what the design buys, in four figures and one sentence, and what can be done about it. */
export function Headline({ onRetry, onStop, onGoOn }: Props) {
  const state = useHeadlineAnswer((s) => s.state);
  const comparison = useComparison();
  const figures = comparison?.figures ?? waiting;
  const full = useRef<HTMLDListElement>(null);

  return (
    <section className="headline" aria-label="What this design does" data-answer={state}>
      <div className="headline__left">
        <dl className="figures" ref={full}>
          {figures.map(({ id, value, unit, label, isHot = false, caution = null, notes = none }) => (
            <Figure
              key={id}
              value={value}
              unit={unit}
              label={label}
              isHot={isHot}
              caution={caution}
              notes={notes.join(", ")}
            />
          ))}
        </dl>
        <Sureness onStop={onStop} onGoOn={onGoOn} />
      </div>
      <div className="headline__right">
        <Words sentence={comparison?.sentence ?? null} onRetry={onRetry} />
        <DesignBar />
      </div>
      <Glance figures={figures} full={full} />
      <Announcer comparison={comparison} />
    </section>
  );
}

const none: readonly number[] = [];

const waiting: readonly HeadlineFigure[] = (
  [
    ["forward", "forward", "dB"],
    ["back", "front-to-back", "dB"],
    ["rear", "front to worst behind", "dB"],
    ["feed", "SWR at the feedpoint", ": 1"],
  ] as const
).map(([id, label, unit]) => ({ id, label, unit, value: "–", isHot: id === "forward" }));
