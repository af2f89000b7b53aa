import type { Fineness } from "./Fineness.ts";
import type { GroundFrame } from "./frameGround.ts";

/** Directions over half a turn that rings and tail use: equal steps, which converge fastest on a closed circle. */
export function ringDirections(frame: GroundFrame, k: number, fineness: Fineness): number {
  if (frame.round) return 1;
  let reach = 0;
  for (let i = 0; i < frame.x.length; i++) reach = Math.max(reach, Math.sqrt(frame.x[i]! ** 2 + frame.y[i]! ** 2));
  return fineness.ringAngles + Math.ceil(2 * k * reach);
}
