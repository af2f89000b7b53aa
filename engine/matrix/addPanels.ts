import type { PanelKernel } from "../kernel/PanelKernel.ts";
import type { Segments } from "../wires/Segments.ts";
import type { Scales } from "./nodeBlock.ts";
import { MOST_POINTS, type Panel } from "./wirePanels.ts";

const kernel = new Float64Array(4 * MOST_POINTS * MOST_POINTS);
/** Points of the one panel × nodes of the other, for currents and for charges. */
let currents = new Float64Array(0);
let charges = new Float64Array(0);

/**
 * Adds what two panels well apart have with each other to the block of their wires: kernels between their points, carried to
 * their nodes,
 *
 *   B_ij += jωμ₀/4π Σ_qr H_qi (t·G·t')_qr H'_rj + 1/(4πjωε₀) Σ_qr D_qi K_qr D'_rj,
 *
 * with H and D the `hat` and `slope` of their rules.
 *
 * @param out,width block of the wires, and its nodes per row
 * @param s,t first segments of the wires
 */
export function addPanels(
  out: Float64Array,
  width: number,
  segments: Segments,
  s: number,
  one: Panel,
  onePoints: number,
  t: number,
  other: Panel,
  otherPoints: number,
  panels: PanelKernel,
  { vector, scalar }: Scales,
): void {
  const H = one.rule(onePoints);
  const K = other.rule(otherPoints);
  panels.read(kernel, segments, s, H.at_m, t, K.at_m);
  const n = one.last - one.first + 1;
  const m = other.last - other.first + 1;
  if (currents.length < 2 * m * onePoints) {
    currents = new Float64Array(2 * m * onePoints);
    charges = new Float64Array(2 * m * onePoints);
  }
  for (let q = 0, at = 0; q < onePoints; q++)
    for (let j = 0; j < m; j++, at += 2) {
      let vr = 0;
      let vi = 0;
      let sr = 0;
      let si = 0;
      for (let r = 0, g = 4 * q * otherPoints, h = j; r < otherPoints; r++, g += 4, h += m) {
        const hat = K.hat[h]!;
        const slope = K.slope[h]!;
        vr += hat * kernel[g]!;
        vi += hat * kernel[g + 1]!;
        sr += slope * kernel[g + 2]!;
        si += slope * kernel[g + 3]!;
      }
      // j (vr + j vi), and (sr + j si)/j.
      currents[at] = -vector * vi;
      currents[at + 1] = vector * vr;
      charges[at] = scalar * si;
      charges[at + 1] = -scalar * sr;
    }
  for (let i = 0; i < n; i++) {
    const row = 2 * ((one.first + i) * width + other.first);
    // Two points at a time; of an odd number the last by itself.
    let q = 0;
    for (; q + 1 < onePoints; q += 2) {
      const h0 = H.hat[q * n + i]!;
      const s0 = H.slope[q * n + i]!;
      const h1 = H.hat[q * n + n + i]!;
      const s1 = H.slope[q * n + n + i]!;
      for (let c = row, at = 2 * m * q, to = at + 2 * m; c < row + 2 * m; c++, at++, to++)
        out[c] = out[c]! + (h0 * currents[at]! + s0 * charges[at]! + (h1 * currents[to]! + s1 * charges[to]!));
    }
    if (q < onePoints) {
      const h0 = H.hat[q * n + i]!;
      const s0 = H.slope[q * n + i]!;
      for (let c = row, at = 2 * m * q; c < row + 2 * m; c++, at++)
        out[c] = out[c]! + (h0 * currents[at]! + s0 * charges[at]!);
    }
  }
}
