/**
 * What a thin sheath of insulation adds to the scalar kernel of its own wire, as the factor of δ(s − s'):
 *
 *   K_sheath = 2 ln(b/a) (1/εi − 1/εm)
 *
 * In the sheath the field of the wire's charge is that in a medium εi instead of εm (air 1, soil εr − jσ/(ωε₀)), so the
 * wire's potential differs by q/(2πε₀) ln(b/a) (1/εi − 1/εm); the magnetic field is what it was. In air this lowers the
 * wave's speed along the wire; in soil it keeps the current from leaking off.
 *
 * Accuracy: a sheath thin against wavelength and wire length; a lossless one; the surface of the soil not within it.
 * Source: J. H. Richmond and E. H. Newman, Radio Science 11 (1976) 13 (from memory).
 *
 * @param a,b   radius of the wire and of the sheath [m]
 * @returns Re, Im
 */
export function sheathTerm(
  a: number,
  b: number,
  sheathPermittivity: number,
  mediumRe: number,
  mediumIm: number,
): [number, number] {
  const log = 2 * Math.log(b / a);
  const size = mediumRe * mediumRe + mediumIm * mediumIm;
  return [log * (1 / sheathPermittivity - mediumRe / size), (log * mediumIm) / size];
}
