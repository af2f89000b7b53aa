import { memo } from "react";
import { compassLetters } from "./compassLetters.ts";
import type { PlanFrame } from "./planFrame.ts";
import { onRing } from "./planFrame.ts";

interface Props {
  readonly frame: PlanFrame;
  readonly heading: number;
}

/** The ring that the beam's arrow rides on, true north up. */
export const CompassRing = memo(function CompassRing({ frame, heading }: Props) {
  return (
    <>
      <circle className="yard-compass" cx={frame.centre.x} cy={frame.centre.y} r={frame.ring_px} />
      <path className="yard-ticks" d={ticks(frame)} />
      {compassLetters(frame, heading).map(({ letter, at }) => (
        <text key={letter} className="yard-letter" x={at.x} y={at.y + 5} textAnchor="middle">
          {letter}
        </text>
      ))}
      <path className="yard-north" d={northArrow(frame)} />
    </>
  );
});

/** A tick every ten degrees, longer every thirty. */
function ticks(frame: PlanFrame): string {
  return Array.from({ length: 36 }, (_, i) => {
    const inner = onRing(frame, i * 10);
    const outer = onRing(frame, i * 10, i % 3 === 0 ? 7 : 4);
    return `M${inner.x.toFixed(1)} ${inner.y.toFixed(1)}L${outer.x.toFixed(1)} ${outer.y.toFixed(1)}`;
  }).join("");
}

function northArrow(frame: PlanFrame): string {
  const { x, y } = onRing(frame, 0);
  return `M${x} ${y - 11}L${x + 5} ${y + 2}H${x - 5}Z`;
}
