import { randomFrom } from "../best/randomFrom.ts";
import type { LooseAxis } from "./looseAxes.ts";
import type { ToleranceRequest } from "./ToleranceRequest.ts";

/** One design as it may be built. */
export interface Draw {
  /** How far off on each axis. */
  readonly x: readonly number[];
  readonly off_deg: number;
}

/** Designs drawn at random from a seed: each error by itself, anywhere within its limits with equal chance. */
export function drawErrors(
  { draws, seed, errors }: Pick<ToleranceRequest, "draws" | "seed" | "errors">,
  axes: readonly Pick<LooseAxis, "drawn">[],
): Draw[] {
  const random = randomFrom(seed);
  const share = () => 2 * random() - 1;
  return Array.from({ length: draws }, () => ({
    x: axes.map((axis) => axis.drawn(share())),
    off_deg: share() * errors.heading_deg,
  }));
}
