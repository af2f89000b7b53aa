import type { LossConstants } from "./LineType.ts";

/** A cable fit to be calculated with; `makeLine` makes it. */
export interface Line extends LossConstants {
  readonly id: string;
  readonly name: string;
  readonly impedance_ohm: number;
  readonly velocityFactor: number;
  readonly impedanceAngle: "by-loss" | "real";
}
