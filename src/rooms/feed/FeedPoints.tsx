import { memo } from "react";
import type { PlanReadout } from "../../../engine/index.ts";
import { staleWords } from "../../charts/ChartFrame.tsx";
import { figure, noFigure, withUnit } from "../../charts/figure.ts";
import { impedanceText } from "../../charts/impedanceText.ts";

interface Props {
  /** The fed elements of the plan: shown empty while there is no answer. */
  readonly fed: readonly { readonly id: string; readonly name: string }[];
  readonly readout: PlanReadout | null;
  /** As text, with its unit. */
  readonly frequency: string;
  readonly stale: boolean;
}

/** What a line would see at each fed base, at the frequency the plan is for. */
export const FeedPoints = memo(function FeedPoints({ fed, readout, frequency, stale }: Props) {
  return (
    <section className={stale ? "feed-stale" : ""} aria-label={`At the feedpoint, ${frequency}`}>
      <div className="feed-points">
        {fed.map(({ id, name }) => {
          const feed = readout?.feeds.find((f) => f.elementId === id);
          return (
            <div key={id}>
              {fed.length > 1 && <p className="feed-name">{name}</p>}
              <dl className="feed-point">
                <dt>R + jX at {frequency}</dt>
                <dd>{feed ? impedanceText(feed.impedance_ohm.re, feed.impedance_ohm.im) : noFigure}</dd>
                <dt>SWR at the feedpoint, against 50 Ω</dt>
                <dd className="feed-swr">{feed ? swrText(feed.impedance_ohm.re, feed.swr50) : noFigure}</dd>
              </dl>
            </div>
          );
        })}
      </div>
      {stale && <p className="feed-said">{staleWords}</p>}
    </section>
  );
});

/** Past a hundred the digits mean nothing. Where power flows out of an element there is no SWR at all. */
function swrText(resistance_ohm: number, swr: number): string {
  if (resistance_ohm < 0) return "none: power comes back";
  return swr > 100 ? "over 100 : 1" : withUnit(figure(swr, 2), ": 1");
}
