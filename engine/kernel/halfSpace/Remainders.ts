import type { Segments } from "../../wires/Segments.ts";
import type { KernelLine } from "./KernelLine.ts";

/**
 * The half-space kernels between two segments as `halfSpacePair` integrates them: I_k = S_k + A_k g with g from the other
 * segment itself ("across") or from its mirror image (both in one medium, heights or depths counted away from the surface).
 */
export interface Remainders {
  /** Is g measured from the mirror image? */
  readonly mirrored: boolean;
  /** Re, Im of A1..A4 (see `staticPart`). */
  readonly staticPart: Float64Array;
  /** |k1|, over whose inverse the remainders change [rad/m]. */
  readonly k1: number;
  /** |k| of g, whose phase and decay a distant pair's rule must follow [rad/m]. */
  readonly k: number;
  /**
   * Writes Re, Im of S1..S4 and of g at one pair of points.
   *
   * @param zeta  sum of the two distances from the surface [m]
   * @param depth of the point in soil, where one is in air [m]
   */
  read(out: Float64Array, rho: number, zeta: number, depth: number): void;
  /** The kernels along ρ between level wires with this height sum, or null where none is kept. */
  levelLine(zeta: number): KernelLine | null;
  /** Moments of g as `pairMoments` gives them. */
  moments(out: Float64Array, segments: Segments, s: number, t: number): void;
}
