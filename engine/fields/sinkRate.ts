/**
 * w = √(ε − cos² α), Re w ≥ 0, Im w ≤ 0: a wave that reaches soil at elevation α goes down in it as e^{jkwz}.
 *
 * @param out 2 numbers, written: Re, Im
 */
export function sinkRate(out: Float64Array, epsRe: number, epsIm: number, elevation_rad: number): Float64Array {
  const c = Math.cos(elevation_rad);
  const re = epsRe - c * c;
  const modulus = Math.sqrt(re * re + epsIm * epsIm);
  // Each part from the sum that does not cancel.
  out[0] = re >= 0 ? Math.sqrt(0.5 * (modulus + re)) : Math.abs(epsIm) / Math.sqrt(2 * (modulus - re));
  out[1] = out[0] === 0 ? -Math.sqrt(modulus) : (0.5 * epsIm) / out[0];
  return out;
}
