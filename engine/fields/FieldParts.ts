/** A direction and what the ground does at its elevation, shared by all parts of a far field. */
export interface Sight {
  cosA: number;
  sinA: number;
  cosP: number;
  sinP: number;
  /** Re, Im of Γ_v and Γ_h; all 0 where there is no ground. */
  readonly gamma: Float64Array;
  /** Re, Im of w = √(ε − cos² α): in soil the wave goes as e^{jkwz}, z < 0. */
  readonly sink: Float64Array;
}

/**
 * One kind of segments in a far field. `setElevation` prepares what does not depend on azimuth; `add` adds
 * Σ ∫ I t·θ̂ e^{jk r̂·r} ds and the same with φ̂, ground reflection included, to Re θ, Im θ, Re φ, Im φ.
 */
export interface FieldPart {
  setElevation(sight: Sight): void;
  add(sum: Float64Array, sight: Sight): void;
  /** Whether its field is surely the same at azimuths φ and −φ, but for the sign of φ̂. */
  mirrored(): boolean;
}
