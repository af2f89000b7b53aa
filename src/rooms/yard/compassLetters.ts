import type { PlanFrame, Point_px } from "./planFrame.ts";
import { onRing } from "./planFrame.ts";

export interface CompassLetter {
  readonly letter: string;
  readonly at: Point_px;
}

const winds = [
  ["N", 0],
  ["E", 90],
  ["S", 180],
  ["W", 270],
] as const;

/** The four winds outside the ring; north always, the others where the beam's arrow leaves room. */
export function compassLetters(frame: PlanFrame, heading_deg: number): CompassLetter[] {
  return winds
    .filter(([, bearing]) => bearing === 0 || turnBetween(heading_deg, bearing) > 9)
    .map(([letter, bearing]) => ({ letter, at: onRing(frame, bearing, 20) }));
}

/** The smaller angle between two bearings. */
function turnBetween(a: number, b: number): number {
  const turn = Math.abs(a - b) % 360;
  return Math.min(turn, 360 - turn);
}
