import type { Segments } from "../wires/Segments.ts";

/** What goes between two panels, by which panelPoints says how many points they take. */
export interface PanelMedium {
  /** |k| of what passes between the points [rad/m]. */
  readonly k: number;
  /** |k| and Im k of what runs along the surface besides and decays [rad/m]. */
  readonly k1: number;
  readonly k1Im: number;
}

/** The kernels of a PairKernel themselves, between points of two straight pieces of wire (panels) that are well apart. */
export interface PanelKernel {
  /**
   * @param s,t first segments of the wires
   * @param fromS,toS where the panel begins and ends, along the wire from its start [m]; likewise T
   * @returns null where the panels are not served
   */
  medium(
    segments: Segments,
    s: number,
    fromS: number,
    toS: number,
    t: number,
    fromT: number,
    toT: number,
  ): PanelMedium | null;
  /**
   * Writes for point i of the one and point j of the other of m points, at 4 (i m + j):
   *   Re, Im of t·G·t', Re, Im of K  [1/m]
   *
   * @param atS,atT points of panels that are served, along the wires from their starts [m]
   */
  read(out: Float64Array, segments: Segments, s: number, atS: Float64Array, t: number, atT: Float64Array): void;
}
