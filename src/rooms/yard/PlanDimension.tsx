import type { DimensionLine } from "./planLabels.ts";

/** The line that measures the spacing on the view from above. */
export function PlanDimension({ from, to, feet }: DimensionLine) {
  return (
    <g className="yard-dimension">
      <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      <line className="yard-dimension-foot" x1={feet[0].x} y1={feet[0].y} x2={from.x} y2={from.y} />
      <line className="yard-dimension-foot" x1={feet[1].x} y1={feet[1].y} x2={to.x} y2={to.y} />
      <circle cx={from.x} cy={from.y} r={2.5} />
      <circle cx={to.x} cy={to.y} r={2.5} />
    </g>
  );
}
