import type { Placement } from "./Placement.ts";

/**
 * Remainders S_k e^{+jk0 R} along one line, as cubic B-spline coefficients uniform in s(x) = ln(1 + x/x0) + x/xb:
 * at a fixed height sum against ρ (radial to radial), or at a fixed distance against ζ (upright to upright). Plain data.
 */
export interface KernelLine {
  readonly place: Placement;
  /** Which coordinate is fixed, and at what [m]. */
  readonly fixed: "zeta" | "rho";
  readonly value: number;
  /** 8: Re, Im of A1..A4 (see `staticPart`). */
  readonly staticPart: Float64Array;
  readonly from: number;
  readonly to: number;
  readonly x0: number;
  readonly xb: number;
  readonly perS: number;
  readonly s0: number;
  /** 8 × (cells + 3). */
  readonly coefficients: Float64Array;
  /** Measured in the middle of every cell against the source, relative to 1/R, plus the source's own error. */
  readonly error: number;
}
