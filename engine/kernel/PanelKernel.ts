import type { Segments } from "../wires/Segments.ts";

/**
 * The kernels of a PairKernel themselves, between points of two straight wires that are well apart.
 *
 * `read` writes for point i of the one and point j of the other of m points, at 4 (i m + j):
 *   Re, Im of t·G·t', Re, Im of K  [1/m]
 */
export interface PanelKernel {
  /** |k| of what passes between the points, and of what runs along the surface, decaying [rad/m]: they say how many points it takes. */
  readonly k: number;
  readonly k1: number;
  readonly k1Im: number;
  /**
   * @param s,t segments, from whose starts
   * @param atS,atT the points are counted, along their tangents [m]
   */
  read(out: Float64Array, segments: Segments, s: number, atS: Float64Array, t: number, atT: Float64Array): void;
}
