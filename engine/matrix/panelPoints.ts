import type { PanelMedium } from "../kernel/PanelKernel.ts";
import { MOST_POINTS } from "./wirePanels.ts";

/** Natural logarithm of the error aimed at, over the largest value of the kernel between the panels. */
const AIM = Math.log(4e-5);
/** Ellipses larger than twice this over kh do not pay for phase: about the number of points that serves. */
const USUAL = 6;

/**
 * How many points of a panel carry the kernels to its nodes, or 0 where MOST_POINTS are not enough.
 *
 * On a panel of half-length h a function that is regular within the ellipse about it of which r is the sum of the half-axes
 * over h, and not above M there, is met by n points to some M r^{−n}. A singularity `gap` away leaves r = y + √(1 + y²),
 * y = gap/h, at least, and e^{−jkR} grows to M = e^{kh (r − 1/r)/2}. Likewise what runs along the surface with k1 and has decayed
 * over the gap.
 */
export function panelPoints(length_m: number, gap_m: number, { k, k1, k1Im }: PanelMedium): number {
  const h = 0.5 * length_m;
  const y = gap_m / h;
  if (y < 1) return 0;
  const most = y + Math.sqrt(1 + y * y);
  const points = Math.max(
    needed(most, k * h, -AIM),
    needed(most, k1 * h, -AIM + k1Im * gap_m - Math.log(1 + k1 * gap_m)),
  );
  return points <= MOST_POINTS ? Math.max(2, Math.ceil(points)) : 0;
}

function needed(most: number, kh: number, digits: number): number {
  const r = Math.min(most, Math.max(2, (2 * USUAL) / kh));
  return (digits + 0.5 * kh * (r - 1 / r)) / Math.log(r);
}
