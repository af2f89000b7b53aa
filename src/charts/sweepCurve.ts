import type { FeedSweep } from "./FeedSweep.ts";
import { type BandQuantity, readQuantity } from "./readSweep.ts";

/** Points drawn for each interval of a sweep. */
const perInterval = 5;

/**
 * A quantity over frequency, ready to draw. SWR bends between samples even where R and X do not, so it is drawn from
 * R and X at points between them; otherwise the line would pass above its own marked minimum.
 */
export function sweepCurve(sweep: FeedSweep, quantity: BandQuantity): { frequency_MHz: number; value: number }[] {
  const f = sweep.frequency_MHz;
  const curve: { frequency_MHz: number; value: number }[] = [];
  for (let i = 0; i < f.length; i++) {
    const steps = quantity === "swr" && i + 1 < f.length ? perInterval : 1;
    for (let k = 0; k < steps; k++) {
      const frequency_MHz = k === 0 ? f[i]! : f[i]! + (k / steps) * (f[i + 1]! - f[i]!);
      curve.push({ frequency_MHz, value: readQuantity(sweep, quantity, frequency_MHz) });
    }
  }
  return curve;
}
