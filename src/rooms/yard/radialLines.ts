import type { LaidWire } from "../../../engine/index.ts";
import type { PlanFrame } from "./planFrame.ts";
import { toSheet } from "./planFrame.ts";

/** Radials and what joins them seen from above, where the engine lays them, as one SVG path. */
export function radialLines(frame: PlanFrame, heading_deg: number, laid: readonly LaidWire[]): string {
  return laid
    .map(({ from_m, to_m }) => {
      const from = toSheet(frame, heading_deg, from_m[0], from_m[1]);
      const to = toSheet(frame, heading_deg, to_m[0], to_m[1]);
      return `M${from.x.toFixed(1)} ${from.y.toFixed(1)}L${to.x.toFixed(1)} ${to.y.toFixed(1)}`;
    })
    .join("");
}
