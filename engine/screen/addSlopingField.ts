import type { SlopingPieces } from "./ScreenInput.ts";

/** A point on the ground whose x and y may be complex: the tail of the integral runs off the real axis. */
export interface GroundPoint {
  xRe: number;
  xIm: number;
  yRe: number;
  yIm: number;
}

/**
 * Adds the tangential magnetic field of sloping pieces on perfect ground to Hx and Hy of every state [A/m].
 *
 * With s along a piece of length L, ζ the place of the foot of the perpendicular and ϱ its length,
 *   H = t × r / (4πϱ²) · [e^{−jkR} (I (s − ζ)/R + I′/jk)]₀ᴸ,
 * exact for the sinusoid through both end currents (see `uprightField`); the image doubles the tangential part.
 * Everything is written with complex coordinates, so that the same lines serve on and off the real axis.
 *
 * @param h states × 4: Re Hx, Im Hx, Re Hy, Im Hy; added to
 */
export function addSlopingField(
  h: Float64Array,
  pieces: SlopingPieces,
  k: number,
  states: number,
  point: GroundPoint,
): void {
  const { from_m, to_m, current } = pieces;
  const count = pieces.radius_m.length;
  for (let i = 0; i < count; i++) {
    const ax = from_m[3 * i]!;
    const ay = from_m[3 * i + 1]!;
    const az = from_m[3 * i + 2]!;
    let tx = to_m[3 * i]! - ax;
    let ty = to_m[3 * i + 1]! - ay;
    let tz = to_m[3 * i + 2]! - az;
    const length = Math.sqrt(tx * tx + ty * ty + tz * tz);
    tx /= length;
    ty /= length;
    tz /= length;
    const vxRe = point.xRe - ax;
    const vxIm = point.xIm;
    const vyRe = point.yRe - ay;
    const vyIm = point.yIm;
    const vz = -az;
    const zetaRe = vxRe * tx + vyRe * ty + vz * tz;
    const zetaIm = vxIm * tx + vyIm * ty;
    // Squares of the distances from both ends, and of the perpendicular.
    const r2Re = vxRe * vxRe - vxIm * vxIm + vyRe * vyRe - vyIm * vyIm + vz * vz;
    const r2Im = 2 * (vxRe * vxIm + vyRe * vyIm);
    const p2Re = r2Re - (zetaRe * zetaRe - zetaIm * zetaIm);
    const p2Im = r2Im - 2 * zetaRe * zetaIm;
    const p4 = p2Re * p2Re + p2Im * p2Im;
    // On the line of the piece itself the field vanishes with ϱ, and the quotient below would be 0/0.
    if (p4 === 0) continue;
    const q2Re = r2Re - 2 * length * zetaRe + length * length;
    const q2Im = r2Im - 2 * length * zetaIm;
    // t × r, tangential parts, over 2πϱ².
    const g = 1 / (2 * Math.PI * p4);
    const wxRe = ty * vz - tz * vyRe;
    const wxIm = -tz * vyIm;
    const wyRe = tz * vxRe - tx * vz;
    const wyIm = tz * vxIm;
    const gxRe = g * (wxRe * p2Re + wxIm * p2Im);
    const gxIm = g * (wxIm * p2Re - wxRe * p2Im);
    const gyRe = g * (wyRe * p2Re + wyIm * p2Im);
    const gyIm = g * (wyIm * p2Re - wyRe * p2Im);
    const start = endTerms(k, r2Re, r2Im, -zetaRe, -zetaIm);
    const end = endTerms(k, q2Re, q2Im, length - zetaRe, -zetaIm);

    const cs = Math.cos(k * length);
    const f = 1 / Math.sin(k * length);
    for (let s = 0; s < states; s++) {
      const at = 4 * (s * count + i);
      const aRe = current[at]!;
      const aIm = current[at + 1]!;
      const bRe = current[at + 2]!;
      const bIm = current[at + 3]!;
      // I′/jk at the ends: −j I′/k.
      const aSlopeRe = f * (bIm - aIm * cs);
      const aSlopeIm = -f * (bRe - aRe * cs);
      const bSlopeRe = f * (bIm * cs - aIm);
      const bSlopeIm = -f * (bRe * cs - aRe);
      const FRe =
        bRe * end.mRe -
        bIm * end.mIm +
        bSlopeRe * end.eRe -
        bSlopeIm * end.eIm -
        (aRe * start.mRe - aIm * start.mIm + aSlopeRe * start.eRe - aSlopeIm * start.eIm);
      const FIm =
        bRe * end.mIm +
        bIm * end.mRe +
        bSlopeRe * end.eIm +
        bSlopeIm * end.eRe -
        (aRe * start.mIm + aIm * start.mRe + aSlopeRe * start.eIm + aSlopeIm * start.eRe);
      h[4 * s] = h[4 * s]! + FRe * gxRe - FIm * gxIm;
      h[4 * s + 1] = h[4 * s + 1]! + FRe * gxIm + FIm * gxRe;
      h[4 * s + 2] = h[4 * s + 2]! + FRe * gyRe - FIm * gyIm;
      h[4 * s + 3] = h[4 * s + 3]! + FRe * gyIm + FIm * gyRe;
    }
  }
}

/** e = e^{−jkR} and m = e · (s − ζ)/R for a complex R². */
function endTerms(
  k: number,
  r2Re: number,
  r2Im: number,
  alongRe: number,
  alongIm: number,
): { eRe: number; eIm: number; mRe: number; mIm: number } {
  const size = Math.sqrt(r2Re * r2Re + r2Im * r2Im);
  const RRe = Math.sqrt(0.5 * (size + r2Re));
  const RIm = RRe > 0 ? (0.5 * r2Im) / RRe : 0;
  const fade = RIm === 0 ? 1 : Math.exp(k * RIm);
  const eRe = fade * Math.cos(k * RRe);
  const eIm = -fade * Math.sin(k * RRe);
  if (size === 0) return { eRe, eIm, mRe: 0, mIm: 0 };
  // along/R = along · R*/|R|²
  const uRe = (alongRe * RRe + alongIm * RIm) / size;
  const uIm = (alongIm * RRe - alongRe * RIm) / size;
  return { eRe, eIm, mRe: eRe * uRe - eIm * uIm, mIm: eRe * uIm + eIm * uRe };
}
