import type { Placement } from "./Placement.ts";

/**
 * Remainders S_k e^{+jk0 R} of the kernels over rectangles of (ρ, ζ), each as a product of Chebyshev series. They cover
 * rMin ≤ max(ρ, ζ) ≤ rMax, ζ ≤ zetaMax. Built by `buildPatches`, read by `readPatches`; plain data throughout.
 */
export interface KernelPatches {
  readonly place: Placement;
  readonly rMin: number;
  readonly rMax: number;
  readonly zetaMax: number;
  /** Octaves from rMax inwards; each has three root rectangles, of which those above zetaMax are empty. */
  readonly octaves: number;
  /** Points per direction. */
  readonly order: number;
  /** 4 per rectangle: ρ0, ρ1, ζ0, ζ1. */
  readonly bounds: Float64Array;
  /** 2 per rectangle: the first of its two halves (0: it is not cut) and the direction of the cut (0 in ρ, 1 in ζ). */
  readonly halves: Int32Array;
  /** Per rectangle: where its coefficients begin in `series`; −1 where it has none. */
  readonly begin: Int32Array;
  /** 8 · order² per rectangle that is not cut: ρ slow, ζ next, Re and Im of S1..S4 fast. */
  readonly series: Float64Array;
  /** Error of S relative to 1/R: the largest found at four spots of each rectangle where the first neglected term peaks,
   * or a quarter of the largest last coefficients, whichever is more. */
  readonly error: number;
  /** Path nodes used in all. */
  readonly nodes: number;
}
