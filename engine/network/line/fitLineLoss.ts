import type { LossConstants, LossPoint } from "./LineType.ts";

/**
 * The constants of loss = k₁√f + k₂f nearest to stated losses: least squares of the differences in dB, both constants
 * held at zero or above. Two points are met exactly where they can be; one point sets k₁ alone, since metal takes most
 * of the loss at high frequency.
 *
 * Accuracy: rounding; how well two constants suit a cable is a matter of its data (foam cables: a few per cent).
 * Source: skin effect ∝ √f and dielectric loss ∝ f, in any textbook of lines (from memory).
 *
 * @param points losses at or above zero at frequencies above zero; at least one [MHz, dB/100 m]
 * @throws RangeError without any point
 */
export function fitLineLoss(points: readonly LossPoint[]): LossConstants {
  if (points.length === 0) throw new RangeError("fitLineLoss: no points");
  // Sums over the points of f, f√f, f², and of the losses times √f and f.
  let ff = 0;
  let fr = 0;
  let rr = 0;
  let lr = 0;
  let lf = 0;
  for (const { frequency_MHz: f, loss_dBPer100m: loss } of points) {
    const r = Math.sqrt(f);
    rr += f;
    fr += f * r;
    ff += f * f;
    lr += loss * r;
    lf += loss * f;
  }
  const rootAlone = { root_dBPer100m: Math.max(0, lr / rr), linear_dBPer100m: 0 };
  const both = rr * ff - fr * fr;
  // Points at one frequency leave the two constants undetermined.
  if (both <= 1e-12 * rr * ff) return rootAlone;
  const root = (lr * ff - lf * fr) / both;
  const linear = (rr * lf - fr * lr) / both;
  if (root >= 0 && linear >= 0) return { root_dBPer100m: root, linear_dBPer100m: linear };
  // The least of a bowl under two floors lies on the floor that is crossed; both are never crossed by losses ≥ 0.
  return linear < 0 ? rootAlone : { root_dBPer100m: 0, linear_dBPer100m: Math.max(0, lf / ff) };
}
