import { useAnswer } from "../store/useAnswer.ts";
import { usePlan } from "../store/usePlan.ts";
import { Icon } from "../ui/Icon.tsx";
import { Popover } from "../ui/Popover.tsx";

const noNotes: readonly never[] = [];

/** How far the figures can be trusted: the preview is named as one, and the engine's own cautions stand with it. */
export function SoilPreview() {
  const isPreview = usePlan((s) => s.plan.ground.kind === "soil" && s.plan.soilModel === "screen");
  const notes = useAnswer((s) => s.readout?.notes ?? noNotes);
  const hasMore = isPreview || notes.length > 0;

  return (
    <div className="sureness">
      {hasMore && (
        <Popover
          buttonClass="button button--quiet sureness__button"
          title="How sure are these figures?"
          label={
            <>
              <Icon name="info" />
              {isPreview ? "quick preview of the soil’s effect" : "notes on this answer"}
              {notes.length > 0 && isPreview && <span className="sureness__count">{notes.length}</span>}
            </>
          }
        >
          {() => (
            <>
              {isPreview && (
                <p>
                  This is a quick approximation. It takes the currents as over a perfect ground and then corrects them
                  for soil and radials. With few or short radials it can be off by tens of ohms at the feedpoint and by
                  decibels in the pattern, because the radials’ own reactance, which it leaves out, detunes a reflector.
                  Differences between two designs on the same radials are safer than either figure alone.
                </p>
              )}
              {notes.length > 0 && (
                <ul className="sureness__notes">
                  {notes.map((note) => (
                    <li key={note.code + note.message}>{note.message}</li>
                  ))}
                </ul>
              )}
            </>
          )}
        </Popover>
      )}
      <span className="sureness__working">working …</span>
    </div>
  );
}
