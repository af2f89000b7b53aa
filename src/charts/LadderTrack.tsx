interface Props {
  /** The bar in words. */
  readonly label: string;
  /** Places along the track in per cent, and the figures that stand there. NaN: there is none. */
  readonly now_percent: number;
  readonly now: string;
  readonly baseline_percent: number;
  readonly baseline: string;
}

const at = (percent: number) => `${percent}%`;

/** How far a number stands from the middle of its mark. */
const away_px = 9;

/**
 * One rung's bar: a tick where the baseline is, a dot where the design is now, the stretch between. A small drawing and
 * not boxes in the table: boxes that move would be laid out and painted each for itself in every frame of a drag. What
 * moves is shifted whole, so that its number need not be set anew.
 */
export function LadderTrack({ label, now_percent, now, baseline_percent, baseline }: Props) {
  const hasNow = Number.isFinite(now_percent);
  const hasBase = Number.isFinite(baseline_percent);
  // Each number stands on the outer side of its mark, so that the two never meet.
  const nowSide = hasBase && now_percent < baseline_percent ? "left" : "right";
  const baseSide = nowSide === "right" ? "left" : "right";
  return (
    <svg className="ld-track" role="img" aria-label={label}>
      <line className="ld-rail" x1="0%" x2="100%" y1="50%" y2="50%" />
      {hasNow && hasBase && (
        <line className="ld-span" x1={at(baseline_percent)} x2={at(now_percent)} y1="50%" y2="50%" />
      )}
      {hasBase && (
        <>
          <line className="ld-tick" x1={at(baseline_percent)} x2={at(baseline_percent)} y1="22%" y2="78%" />
          <TrackNumber x={at(baseline_percent)} side={baseSide} className="ld-number-base" text={baseline} />
        </>
      )}
      {hasNow && (
        <g className="ld-now" style={{ transform: `translateX(${at(now_percent)})` }}>
          <circle className="ld-dot" cy="50%" r={6} />
          <TrackNumber side={nowSide} className="ld-number-now" text={now} />
        </g>
      )}
    </svg>
  );
}

interface NumberProps {
  readonly x?: string;
  readonly side: "left" | "right";
  readonly className: string;
  readonly text: string;
}

function TrackNumber({ x, side, className, text }: NumberProps) {
  return (
    <text
      className={`ld-number ld-number-${side} ${className}`}
      x={x}
      y="50%"
      dx={side === "left" ? -away_px : away_px}
      dy="0.35em"
      textAnchor={side === "left" ? "end" : "start"}
    >
      {text}
    </text>
  );
}
