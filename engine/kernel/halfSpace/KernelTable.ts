import type { Placement } from "./Placement.ts";

/**
 * Remainders S_k e^{+jk0 R} on a grid that is uniform in
 *
 *   s = ln(1 + R/R0) + R/Rb  (rows)  and  t = ζ/(R + ρ) = tan(½ atan2(ζ, ρ))  (columns, 0 on the surface, 1 on the axis),
 *
 * as cubic B-spline coefficients. Plain data: it can be sent to another thread or kept in a database.
 */
export interface KernelTable {
  readonly place: Placement;
  /** 8: Re, Im of A1..A4 (see `staticPart`). */
  readonly staticPart: Float64Array;
  /** Distances served [m]. */
  readonly rMin: number;
  readonly rMax: number;
  readonly R0: number;
  readonly Rb: number;
  /** Cells per unit of s, s at the first row, and cells per unit of t. */
  readonly perS: number;
  readonly s0: number;
  readonly perT: number;
  /** Coefficients per direction: cells + 3. */
  readonly rows: number;
  readonly columns: number;
  /** rows × columns × 8. */
  readonly coefficients: Float64Array;
  /**
   * Measured: the largest error of any remainder relative to 1/R, at four places of some 5000 cells against the series the
   * table was read from, plus the error of those series.
   */
  readonly error: number;
}
