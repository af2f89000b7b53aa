import type { PlacedLabel } from "./placeLabels.ts";
import type { Point_px } from "./planFrame.ts";

interface Props {
  readonly label: PlacedLabel;
  readonly className?: string;
  /** What a label that had to go far is tied to. */
  readonly tieTo?: Point_px;
}

/** One placed label with a rim of paper, so that it can be read across lines. */
export function LabelText({ label, className = "", tieTo }: Props) {
  const { box, isFar } = label;
  return (
    <>
      {isFar && tieTo && (
        <line
          className="yard-tie"
          x1={tieTo.x}
          y1={tieTo.y}
          x2={Math.min(Math.max(tieTo.x, box.x), box.x + box.width)}
          y2={Math.min(Math.max(tieTo.y, box.y), box.y + box.height)}
        />
      )}
      <text className={`yard-label ${className}`} x={label.x} y={label.baseline} textAnchor={label.textAnchor}>
        {label.text}
      </text>
    </>
  );
}
