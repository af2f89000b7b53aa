import type { HalfSpace } from "./HalfSpace.ts";

/** Up to which |k1| D so many depths serve: what is left is below 2e-5/R. */
const COUNTS = [
  [0.3, 4],
  [1, 5],
  [2, 6],
  [4, 8],
  [12, 12],
  [24, 20],
  [48, 28],
] as const;
/** Two metres deep in sea water at 60 MHz: 97. */
const MOST = 44;

/**
 * Depths from 0 to `deepest` through which kernels across the surface are interpolated: Chebyshev's points with both ends,
 * d_i = ½ D (1 − cos(π i/(n − 1))), more of them the deeper D is against 1/|k1|.
 *
 * Soil with little loss (Im k1 below a tenth of Re k1) is good up to |k1| D = 7: beyond, kernels of the deepest point are
 * e^{u0 D} times larger at heights of the others than there, and their difference cancels. Fresh water at 28 MHz: 1.3 m. Wires there are refused (checkSurface).
 */
export function depthGrid(h: HalfSpace, deepest_m: number): number[] {
  const swing = deepest_m * Math.sqrt(h.k1Re * h.k1Re + h.k1Im * h.k1Im);
  const n = COUNTS.find(([most]) => swing <= most)?.[1] ?? MOST;
  return Array.from({ length: n }, (_, i) =>
    i === n - 1 ? deepest_m : 0.5 * deepest_m * (1 - Math.cos((Math.PI * i) / (n - 1))),
  );
}
