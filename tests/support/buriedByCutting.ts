import type { HalfSpace } from "../../engine/kernel/halfSpace/HalfSpace.ts";
import { placeAcross, placeInSoil } from "../../engine/kernel/halfSpace/Placement.ts";
import { staticPart } from "../../engine/kernel/halfSpace/staticPart.ts";
import { momentsByCutting } from "./momentsByCutting.ts";
import type { Ends } from "./pairByCutting.ts";

type Vector = readonly [number, number, number];

/**
 * The whole kernels I1..I4 of what a surface reflects between two points in soil, or lets through between one in air and
 * one in soil, Re and Im: 8 numbers.
 */
export type WholeKernels = (out: Float64Array, rho: number, zeta: number, height: number, depth: number) => void;

/**
 * The moments of two segments of which one or both are in soil, by brute force and without the engine's rules: 1/R and what
 * grows like it by rectangles cut down to a third of the radius, the rest of the whole kernels by rectangles cut down
 * to a small part of 1/|k1|.
 *
 * As in the engine the static kernel has the radius in it, R² + a², but for parallel wires more than a diameter apart.
 *
 * @param whole   kernels, to an error far below what is to be checked
 * @param radius  of both [m]
 * @returns as a PairKernel writes: 4 real parts, 4 imaginary parts of V, Re S, Im S
 */
export function buriedByCutting(
  h: HalfSpace,
  whole: WholeKernels,
  first: Ends,
  second: Ends,
  radius: number,
): number[] {
  const { k0, k1Re, k1Im, epsRe, epsIm } = h;
  const middle = (e: Ends) => 0.5 * (e[0][2] + e[1][2]);
  const inSoil = middle(first) < 0 && middle(second) < 0;
  const firstInAir = middle(first) > 0;
  const A = staticPart(inSoil ? placeInSoil(h) : placeAcross(h, 0));
  const kRe = inSoil ? k1Re : k0;
  const kIm = inSoil ? k1Im : 0;
  const flip = (v: Vector): Vector => [v[0], v[1], -v[2]];
  const direction = (e: Ends): Vector => {
    const d = [0, 1, 2].map((c) => e[1][c]! - e[0][c]!) as [number, number, number];
    const L = Math.hypot(...d);
    return [d[0] / L, d[1] / L, d[2] / L];
  };
  const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

  /** The radius in the static kernel, for the second segment or for its image. */
  const softening = (e: Ends) => {
    const d = direction(first);
    if (1 - Math.abs(dot(d, direction(e))) > 1e-12) return radius;
    const away: Vector = [e[0][0] - first[0][0], e[0][1] - first[0][1], e[0][2] - first[0][2]];
    const along = dot(away, d);
    return Math.sqrt(Math.max(0, dot(away, away) - along * along)) > 2 * radius ? 0 : radius;
  };
  const softDirect = softening(second);
  const softImage = inSoil ? softening([flip(second[0]), flip(second[1])]) : softDirect;

  const separation = (p: Vector, q: Vector) => {
    const x = p[0] - q[0];
    const y = p[1] - q[1];
    const zeta = inSoil ? -p[2] - q[2] : Math.abs(p[2] - q[2]);
    return { x, y, zeta, rho: Math.hypot(x, y), R: Math.hypot(x, y, zeta) };
  };
  /** e^{−jkR}/R with 1/R softened: Re, Im, and Re without the softening. */
  const g = (R: number, kr: number, ki: number, soft: number): readonly [number, number, number] => {
    const size = Math.exp(ki * R);
    if (R < 1e-9) return [ki + 1 / soft, -kr, 0];
    const rest = (size * Math.cos(kr * R) - 1) / R;
    return [rest + 1 / Math.hypot(R, soft), (-size * Math.sin(kr * R)) / R, rest + 1 / R];
  };
  /** V and K from I1..I4, observer p in direction a, source q in direction b; depths count downwards in soil. */
  const contract = (out: Float64Array, I: Float64Array, x: number, y: number, rho: number, a: Vector, b: Vector) => {
    const [az, bz] = inSoil ? [-a[2], -b[2]] : [a[2], b[2]];
    const cos = rho > 0 ? x / rho : 0;
    const sin = rho > 0 ? y / rho : 0;
    for (const part of [0, 1]) {
      const [xx, zx, zz] = [I[part]!, I[4 + part]!, I[(inSoil ? 6 : 0) + part]!];
      out[part] =
        xx * (a[0] * b[0] + a[1] * b[1]) +
        zz * az * bz +
        zx * (az * (cos * b[0] + sin * b[1]) - bz * (cos * a[0] + sin * a[1]));
      out[2 + part] = I[2 + part]!;
    }
    if (inSoil) overEps(out);
  };
  const overEps = (out: Float64Array) => {
    const [re, im] = [out[2]!, out[3]!];
    out[2] = (re * epsRe + im * epsIm) / (epsRe * epsRe + epsIm * epsIm);
    out[3] = (im * epsRe - re * epsIm) / (epsRe * epsRe + epsIm * epsIm);
  };

  const I = new Float64Array(10);
  const soft = 0.1 / Math.hypot(k1Re, k1Im);
  const rest = momentsByCutting(
    first,
    second,
    (out, p, q, a, b) => {
      const { x, y, zeta, rho, R } = separation(p, q);
      whole(I, rho, zeta, firstInAir ? p[2] : q[2], -(firstInAir ? q[2] : p[2]));
      const [, gi, gr] = g(R, kRe, kIm, 1);
      for (let c = 0; c < 8; c += 2) {
        const f = c === 4 ? rho / (R + zeta) : 1;
        I[c]! -= f * (A[c]! * gr - A[c + 1]! * gi);
        I[c + 1]! -= f * (A[c]! * gi + A[c + 1]! * gr);
      }
      contract(out, I, x, y, rho, a, b);
    },
    (p, q) => Math.max(separation(p, q).R, soft),
    { small: 1, points: 6, least_m: 2e-3 },
  );
  const fine = { small: 0.9, points: 8 };
  const grown = momentsByCutting(
    first,
    second,
    (out, p, q, a, b) => {
      const { x, y, zeta, rho, R } = separation(p, q);
      const [gr, gi, bare] = g(R, kRe, kIm, softImage);
      for (let c = 0; c < 8; c += 2) {
        const f = c === 4 ? (rho === 0 ? 0 : rho / (R + zeta)) : 1;
        const re = c === 4 ? bare : gr;
        I[c] = f * (A[c]! * re - A[c + 1]! * gi);
        I[c + 1] = f * (A[c]! * gi + A[c + 1]! * re);
      }
      contract(out, I, x, y, rho, a, b);
    },
    (p, q) => Math.max(separation(p, q).R, 0.4 * radius),
    fine,
  );
  const total = rest.map((v, i) => v + grown[i]!);
  if (!inSoil) return total;
  const direct = momentsByCutting(
    first,
    second,
    (out, p, q, a, b) => {
      const [gr, gi] = g(Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]), k1Re, k1Im, softDirect);
      out[0] = dot(a, b) * gr;
      out[1] = dot(a, b) * gi;
      out[2] = gr;
      out[3] = gi;
      overEps(out);
    },
    (p, q) => Math.max(Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]), 0.4 * radius),
    fine,
  );
  return total.map((v, i) => v + direct[i]!);
}
