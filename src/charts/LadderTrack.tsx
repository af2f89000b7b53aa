interface Props {
  /** The bar in words. */
  readonly label: string;
  /** Places along the track in per cent, and the figures that stand there. NaN: there is none. */
  readonly now_percent: number;
  readonly now: string;
  readonly baseline_percent: number;
  readonly baseline: string;
}

const at = (percent: number) => `${percent.toFixed(1)}%`;

/** One rung's bar: a tick where the baseline is, a dot where the design is now, the stretch between. */
export function LadderTrack({ label, now_percent, now, baseline_percent, baseline }: Props) {
  const hasNow = Number.isFinite(now_percent);
  const hasBase = Number.isFinite(baseline_percent);
  // Each number stands on the outer side of its mark, so that the two never meet.
  const nowSide = hasBase && now_percent < baseline_percent ? "left" : "right";
  const baseSide = nowSide === "right" ? "left" : "right";
  return (
    // A name, not hidden words: words would be laid out anew in every frame of a drag.
    <div className="ld-track" role="img" aria-label={label}>
      <div className="ld-scale">
        <span className="ld-rail" />
        {hasNow && hasBase && (
          <span
            className="ld-span"
            style={{
              left: at(Math.min(now_percent, baseline_percent)),
              width: at(Math.abs(now_percent - baseline_percent)),
            }}
          />
        )}
        {hasBase && (
          <>
            <span className="ld-tick" style={{ left: at(baseline_percent) }} />
            <span className={`ld-number ld-number-base ld-number-${baseSide}`} style={{ left: at(baseline_percent) }}>
              {baseline}
            </span>
          </>
        )}
        {hasNow && (
          <>
            <span className="ld-dot" style={{ left: at(now_percent) }} />
            <span className={`ld-number ld-number-${nowSide}`} style={{ left: at(now_percent) }}>
              {now}
            </span>
          </>
        )}
      </div>
    </div>
  );
}
