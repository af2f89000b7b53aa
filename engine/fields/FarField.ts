/**
 * Far field of a solved problem. E = F e^{−jkr}/r; F is written as Re Fθ, Im Fθ, Re Fφ, Im Fφ [V], θ from the zenith.
 * Angles in radians. Below the horizon of a ground the field is zero.
 */
export interface FarField {
  /** Elevations may be −π/2..π/2 in free space, 0..π/2 over a ground. */
  field(out: Float64Array, elevation_rad: number, azimuth_rad: number): Float64Array;
  /** What is on one side of the x axis is on the other, currents and all: |F|² is the same at azimuths φ and −φ. */
  readonly mirrored: boolean;
  /** |F|² = |Fθ|² + |Fφ|² [V²]. */
  intensity(elevation_rad: number, azimuth_rad: number): number;
}
