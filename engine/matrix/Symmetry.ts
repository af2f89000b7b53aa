/**
 * A group of turns or a mirror image that carries the wires into themselves and every port into itself. Currents that the
 * ports drive are then alike on alike wires, so that one unknown serves a whole class of basis functions.
 */
export interface Symmetry {
  /** Per group element, the identity first: which wire each wire is carried to. */
  readonly images: readonly Int32Array[];
  /** Number of classes: unknowns that are left. */
  readonly count: number;
  /** Per basis function its class; −1 where symmetry forbids it any current. */
  readonly classOf: Int32Array;
  /** Per basis function: ±1 against the first of its class, over the root of the class's size. */
  readonly weight: Float64Array;
}
