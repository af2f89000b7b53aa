import { memo } from "react";
import { useAnswer } from "../store/useAnswer.ts";
import { usePlan } from "../store/usePlan.ts";
import { Button } from "../ui/Button.tsx";
import { Icon } from "../ui/Icon.tsx";
import { Popover } from "../ui/Popover.tsx";
import { ModelWords } from "./ModelWords.tsx";
import { spreadWords } from "./spreadWords.ts";
import { useAnswerLabel } from "./useAnswerLabel.ts";
import { useHeadlineAnswer } from "./useHeadlineAnswer.ts";

interface Props {
  /** Breaks the full answer off, and takes it up again. */
  onStop(): void;
  onGoOn(): void;
}

const noNotes: readonly never[] = [];

/** What the figures are, how far they can be trusted, and the engine's own cautions. One line high, whatever it says. */
export const Sureness = memo(function Sureness({ onStop, onGoOn }: Props) {
  const label = useAnswerLabel();
  const notes = useHeadlineAnswer((s) => s.readout?.notes ?? noNotes);
  const previewOnly = useAnswer((s) => s.previewOnly);
  const isFull = usePlan((s) => s.plan.soilModel === "full-wave");
  const edit = usePlan((s) => s.edit);
  const isStopped = useAnswer((s) => s.isStopped);
  const layings = useAnswer((s) => s.layings);
  // Read only where there is a spread to tell, so that a drag redraws nothing.
  const plan = usePlan((s) => (layings ? s.plan : null));
  const spread = layings && plan && spreadWords(layings, plan);
  const count = notes.length === 1 ? "1 note" : `${notes.length} notes`;

  return (
    <div className="sureness">
      {(label || notes.length > 0) && (
        <Popover
          buttonClass="button button--quiet sureness__button"
          title="How sure are these figures?"
          label={
            <>
              <span className="sureness__label" data-kind={label?.kind}>
                <Icon name={label?.icon ?? "info"} />
                {label?.text ?? "this answer"}
              </span>
              {notes.length > 0 && <span className="sureness__count">{count}</span>}
              {spread && <span className="sureness__count">few radials: a spread</span>}
            </>
          }
        >
          {() => (
            <div className="sureness__panel">
              {notes.length > 0 && (
                <ol className="sureness__notes">
                  {notes.map((note) => (
                    <li key={note.code + note.message}>{note.message}</li>
                  ))}
                </ol>
              )}
              {previewOnly.length > 0 && (
                <ul className="sureness__notes">
                  {previewOnly.map((problem) => (
                    <li key={problem.where + problem.code}>{problem.message}</li>
                  ))}
                </ul>
              )}
              {spread && <p>{spread}</p>}
              {isStopped && <Button onClick={onGoOn}>Go on with the full answer</Button>}
              {label?.kind === "coming" && <Button onClick={onStop}>Do not wait for the full answer</Button>}
              {label && <ModelWords kind={label.kind} isFull={isFull} />}
              {label && (
                <Button
                  onClick={() =>
                    edit(
                      (p) => ({ ...p, soilModel: isFull ? "screen" : "full-wave" }),
                      isFull ? "keep to the quick preview" : "ask for the full answer",
                    )
                  }
                >
                  {isFull ? "Keep to the quick preview" : "Work it out in full"}
                </Button>
              )}
            </div>
          )}
        </Popover>
      )}
      {!label && <span className="sureness__working">working …</span>}
    </div>
  );
});
