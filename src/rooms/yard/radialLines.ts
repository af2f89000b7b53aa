import { type ElementPlan, radialDirections } from "../../../engine/index.ts";
import type { PlanFrame } from "./planFrame.ts";
import { toSheet } from "./planFrame.ts";

/** The radials of one element seen from above, where the engine lays them, as one SVG path. */
export function radialLines(frame: PlanFrame, heading_deg: number, element: ElementPlan): string {
  const { count, length_m } = element.radials;
  const hub = toSheet(frame, heading_deg, element.forward_m, element.left_m);
  const lines: string[] = [];
  for (const azimuth of radialDirections(count)) {
    const end = toSheet(
      frame,
      heading_deg,
      element.forward_m + length_m * Math.cos(azimuth),
      element.left_m + length_m * Math.sin(azimuth),
    );
    lines.push(`M${hub.x.toFixed(1)} ${hub.y.toFixed(1)}L${end.x.toFixed(1)} ${end.y.toFixed(1)}`);
  }
  return lines.join("");
}
