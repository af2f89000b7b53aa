import type { Segments } from "../wires/Segments.ts";
import { linearIntegral } from "./linearIntegral.ts";

const part = new Float64Array(2);

/**
 * Several segments in one straight line as a function of direction: F(x) = ∫ I(s) e^{jkx(s − c)} ds, c the middle of the
 * line, x = t·r̂ in −1..1, as a Chebyshev series. A radial of ten segments then costs a dozen products a direction
 * instead of ten integrals.
 */
export interface StraightIntegral {
  /** Middle of the line [m]. */
  readonly x_m: number;
  readonly y_m: number;
  readonly z_m: number;
  readonly tx: number;
  readonly ty: number;
  readonly tz: number;
  /** 2 (n + 1): Re, Im of the coefficients, the first halved. */
  readonly series: Float64Array;
}

/**
 * Series of the segments first … past − 1, which follow one another in one straight line.
 *
 * Accuracy: 1e-10 of ∫|I| ds; the coefficients fall as Bessel functions J_n(½kL), and n goes to ¾kL + 10.
 *
 * @param currents 4·S, see segmentCurrents
 */
export function straightIntegral(
  segments: Segments,
  currents: Float64Array,
  k: number,
  first: number,
  past: number,
): StraightIntegral {
  const { start, tangent, length } = segments;
  let L = 0;
  for (let s = first; s < past; s++) L += length[s]!;
  const tx = tangent[3 * first]!;
  const ty = tangent[3 * first + 1]!;
  const tz = tangent[3 * first + 2]!;
  const n = Math.ceil(0.75 * k * L) + 10;
  const values = new Float64Array(2 * (n + 1));
  for (let i = 0; i <= n; i++) {
    const q = k * Math.cos((Math.PI * (i + 0.5)) / (n + 1));
    let at = -0.5 * L;
    for (let s = first; s < past; s++) {
      const psi = 0.5 * q * length[s]!;
      linearIntegral(part, currents, 4 * s, length[s]!, q * at + psi, psi);
      values[2 * i]! += part[0]!;
      values[2 * i + 1]! += part[1]!;
      at += length[s]!;
    }
  }
  const series = new Float64Array(2 * (n + 1));
  for (let m = 0; m <= n; m++) {
    let re = 0;
    let im = 0;
    for (let i = 0; i <= n; i++) {
      const c = Math.cos((Math.PI * m * (i + 0.5)) / (n + 1));
      re += c * values[2 * i]!;
      im += c * values[2 * i + 1]!;
    }
    const f = (m === 0 ? 1 : 2) / (n + 1);
    series[2 * m] = f * re;
    series[2 * m + 1] = f * im;
  }
  return {
    x_m: start[3 * first]! + 0.5 * L * tx,
    y_m: start[3 * first + 1]! + 0.5 * L * ty,
    z_m: start[3 * first + 2]! + 0.5 * L * tz,
    tx,
    ty,
    tz,
    series,
  };
}

/** Evaluates a series at x in −1..1 by Clenshaw's recurrence: out = Re, Im. */
export function readStraight(out: Float64Array, { series }: StraightIntegral, x: number): void {
  let a1 = 0;
  let a2 = 0;
  let b1 = 0;
  let b2 = 0;
  const twice = 2 * x;
  for (let m = series.length - 2; m >= 2; m -= 2) {
    const a = series[m]! + twice * a1 - a2;
    const b = series[m + 1]! + twice * b1 - b2;
    a2 = a1;
    a1 = a;
    b2 = b1;
    b1 = b;
  }
  out[0] = series[0]! + x * a1 - a2;
  out[1] = series[1]! + x * b1 - b2;
}

/**
 * Evaluates a series at x and at −x together: out = Re, Im at x, Re, Im at −x. Even terms are alike and odd ones turned, and
 * either half obeys T_m+2 = 2y T_m − T_m−2 with y = 2x² − 1.
 */
export function readBothWays(out: Float64Array, { series }: StraightIntegral, x: number): void {
  const y = 2 * x * x - 1;
  const twice = 2 * y;
  let a1 = 0;
  let a2 = 0;
  let b1 = 0;
  let b2 = 0;
  let c1 = 0;
  let c2 = 0;
  let d1 = 0;
  let d2 = 0;
  // Pairs of an even term and the odd one after it, the last of which may be none.
  const last = (series.length >> 2) << 2;
  for (let m = last < series.length ? last : last - 4; m >= 4; m -= 4) {
    const a = series[m]! + twice * a1 - a2;
    const b = series[m + 1]! + twice * b1 - b2;
    const c = (series[m + 2] ?? 0) + twice * c1 - c2;
    const d = (series[m + 3] ?? 0) + twice * d1 - d2;
    a2 = a1;
    a1 = a;
    b2 = b1;
    b1 = b;
    c2 = c1;
    c1 = c;
    d2 = d1;
    d1 = d;
  }
  const evenRe = series[0]! + y * a1 - a2;
  const evenIm = series[1]! + y * b1 - b2;
  // T₋₁ = T₁ = x.
  const oddRe = x * (series[2]! + (twice - 1) * c1 - c2);
  const oddIm = x * (series[3]! + (twice - 1) * d1 - d2);
  out[0] = evenRe + oddRe;
  out[1] = evenIm + oddIm;
  out[2] = evenRe - oddRe;
  out[3] = evenIm - oddIm;
}
