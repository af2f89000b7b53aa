import type { ToleranceBand } from "./TolerancePicture.ts";

/**
 * The values that 5, 50 and 95 of 100 lie below, straight between neighbours in order. Infinities take part; what is not a
 * number is left out.
 *
 * @throws RangeError when nothing is left
 */
export function bandOf(values: readonly number[]): ToleranceBand {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  if (sorted.length === 0) throw new RangeError(`bandOf: none of ${values.length} values is a number`);
  const at = (part: number) => {
    const place = part * (sorted.length - 1);
    const below = sorted[Math.floor(place)]!;
    const above = sorted[Math.ceil(place)]!;
    return below === above ? below : below + (above - below) * (place - Math.floor(place));
  };
  return { low: at(0.05), middle: at(0.5), high: at(0.95) };
}
