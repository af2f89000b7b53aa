import { figure } from "./figure.ts";
import type { LadderRow } from "./ladderRows.ts";
import type { LadderScale } from "./ladderScale.ts";

const at = (place: number) => `${(place * 100).toFixed(1)}%`;

/** One rung's bar: a tick where the baseline is, a dot where the design is now, the stretch between. For the eye only. */
export function LadderTrack({ row, scale }: { readonly row: LadderRow; readonly scale: LadderScale }) {
  const now = scale.place(row.now_dBi);
  const base = scale.place(row.baseline_dBi);
  const hasNow = Number.isFinite(now);
  const hasBase = Number.isFinite(base);
  // Each number stands on the outer side of its mark, so that the two never meet.
  const nowSide = hasBase && now < base ? "left" : "right";
  const baseSide = nowSide === "right" ? "left" : "right";
  return (
    <div className="ld-track" aria-hidden="true">
      <div className="ld-scale">
        <span className="ld-rail" />
        {hasNow && hasBase && (
          <span className="ld-span" style={{ left: at(Math.min(now, base)), width: at(Math.abs(now - base)) }} />
        )}
        {hasBase && (
          <>
            <span className="ld-tick" style={{ left: at(base) }} />
            <span className={`ld-number ld-number-base ld-number-${baseSide}`} style={{ left: at(base) }}>
              {figure(row.baseline_dBi, 1)}
            </span>
          </>
        )}
        {hasNow && (
          <>
            <span className="ld-dot" style={{ left: at(now) }} />
            <span className={`ld-number ld-number-${nowSide}`} style={{ left: at(now) }}>
              {figure(row.now_dBi, 1)}
            </span>
          </>
        )}
      </div>
    </div>
  );
}
