import type { Segments } from "../../wires/Segments.ts";
import type { Remainders } from "./Remainders.ts";
import { readLine } from "./readLine.ts";

const I = new Float64Array(10);

/**
 * The whole kernels of a half space between points of two straight wires, static part and all: what it reflects when both are in
 * one medium, all of it when s is in air and t in soil,
 *
 *   t·G·t' = t_h·t'_h I1 + t_z t'_z I4 + (t_z ρ̂·t'_h − ρ̂·t_h t'_z) I3,   K = I2,   I_k = S_k + A_k g.
 *
 * @param out   written at i·downS + j·downT for point i of s and j of t: Re, Im of t·G·t', Re, Im of K
 * @param up    −1 where both are in soil: heights then count downwards
 * @param atS,atT points, along the wires from the starts of segments s and t [m]
 * Accuracy: that of the table, or of the line between level wires.
 */
export function readBetween(
  out: Float64Array,
  remainders: Remainders,
  up: 1 | -1,
  { start, tangent }: Segments,
  s: number,
  atS: Float64Array,
  downS: number,
  t: number,
  atT: Float64Array,
  downT: number,
): void {
  const { staticPart: A, mirrored } = remainders;
  const sx = tangent[3 * s]!;
  const sy = tangent[3 * s + 1]!;
  const sz = up * tangent[3 * s + 2]!;
  const tx = tangent[3 * t]!;
  const ty = tangent[3 * t + 1]!;
  const tz = up * tangent[3 * t + 2]!;
  const level = sx * tx + sy * ty + (mirrored ? 0 : sz * tz);
  const upright = mirrored ? sz * tz : 0;
  const turns = sz * sz * (tx * tx + ty * ty) + tz * tz * (sx * sx + sy * sy) > 1e-24;
  const x0 = start[3 * s]! - start[3 * t]!;
  const y0 = start[3 * s + 1]! - start[3 * t + 1]!;
  const zs = up * start[3 * s + 2]!;
  const zt = up * start[3 * t + 2]!;
  const line = sz === 0 && tz === 0 ? remainders.levelLine(zs + (mirrored ? zt : -zt)) : null;
  for (let i = 0; i < atS.length; i++) {
    const u = atS[i]!;
    for (let j = 0, at = i * downS; j < atT.length; j++, at += downT) {
      const v = atT[j]!;
      const x = x0 + u * sx - v * tx;
      const y = y0 + u * sy - v * ty;
      const w = zt + v * tz;
      const zeta = zs + u * sz + (mirrored ? w : -w);
      const rho = Math.sqrt(x * x + y * y);
      if (line) readLine(I, line, rho);
      else remainders.read(I, rho, zeta, -w);
      const gr = I[8]!;
      const gi = I[9]!;
      let re = level * (I[0]! + A[0]! * gr - A[1]! * gi);
      let im = level * (I[1]! + A[0]! * gi + A[1]! * gr);
      if (upright !== 0) {
        re += upright * (I[6]! + A[6]! * gr - A[7]! * gi);
        im += upright * (I[7]! + A[6]! * gi + A[7]! * gr);
      }
      if (turns && rho > 0) {
        // ρ̂ from source to observer; ρ/(R + ζ) with the static part.
        const turn = (sz * (x * tx + y * ty) - tz * (x * sx + y * sy)) / rho;
        const angle = rho / (Math.sqrt(rho * rho + zeta * zeta) + zeta);
        re += turn * (I[4]! + angle * (A[4]! * gr - A[5]! * gi));
        im += turn * (I[5]! + angle * (A[4]! * gi + A[5]! * gr));
      }
      out[at] = re;
      out[at + 1] = im;
      out[at + 2] = I[2]! + A[2]! * gr - A[3]! * gi;
      out[at + 3] = I[3]! + A[2]! * gi + A[3]! * gr;
    }
  }
}
