import type { Cut } from "../../engine/index.ts";
import type { Spot } from "./tracePath.ts";

/** A cut's samples as points of a drawing, in order; a gain that is not finite becomes a point that is not, a gap. */
export function cutPoints(cut: Cut, point: (angle: number, gain_dBi: number) => Spot): Spot[] {
  return cut.angle_deg.map((angle, i) => point(angle, cut.gain_dBi[i]!));
}
