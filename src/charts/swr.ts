import { swr as swrOnLine } from "../../engine/index.ts";

/** Reference of every SWR on the page: the cable that is in use. */
export const reference_ohm = 50;

/** SWR against 50 ohm. Infinite where the load takes no power, NaN for what is not finite. */
export function swr(resistance_ohm: number, reactance_ohm: number): number {
  if (!Number.isFinite(resistance_ohm + reactance_ohm)) return Number.NaN;
  return swrOnLine(resistance_ohm, reactance_ohm, reference_ohm);
}
