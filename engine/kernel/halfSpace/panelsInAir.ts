import { COS_TABLE, SIN_TABLE, STEP_RAD, STEPS_PER_RAD } from "../../special/expTable.ts";
import type { PanelKernel } from "../PanelKernel.ts";
import type { KernelTable } from "./KernelTable.ts";
import { levelLine } from "./levelLine.ts";
import { readLine } from "./readLine.ts";
import { readTable } from "./readTable.ts";

const I = new Float64Array(10);

/**
 * Kernels between points of two wires in air: free space's e^{−jk0 R}/R and what the soil reflects, I_k = S_k + A_k g,
 *
 *   t·G·t' = t·t' e^{−jk0 R}/R + t_h·t'_h I1 + t_z t'_z I4 + (t_z ρ̂·t'_h − ρ̂·t_h t'_z) I3,   K = e^{−jk0 R}/R + I2.
 *
 * Accuracy: that of the table, or of the line between level wires.
 */
export function panelsInAir(table: KernelTable): PanelKernel {
  const { k0, k1Re, k1Im } = table.place.halfSpace;
  const A = table.staticPart;
  return {
    k: k0,
    k1: Math.sqrt(k1Re * k1Re + k1Im * k1Im),
    k1Im,
    read(out, { start, tangent }, s, atS, t, atT) {
      const sx = tangent[3 * s]!;
      const sy = tangent[3 * s + 1]!;
      const sz = tangent[3 * s + 2]!;
      const tx = tangent[3 * t]!;
      const ty = tangent[3 * t + 1]!;
      const tz = tangent[3 * t + 2]!;
      const level = sx * tx + sy * ty;
      const upright = sz * tz;
      const dot = level + upright;
      const turns = sz * sz * (tx * tx + ty * ty) + tz * tz * (sx * sx + sy * sy) > 1e-24;
      const x0 = start[3 * s]! - start[3 * t]!;
      const y0 = start[3 * s + 1]! - start[3 * t + 1]!;
      const zs = start[3 * s + 2]!;
      const zt = start[3 * t + 2]!;
      const line = sz === 0 && tz === 0 ? levelLine(table, zs + zt) : null;
      for (let i = 0, at = 0; i < atS.length; i++) {
        const u = atS[i]!;
        for (let j = 0; j < atT.length; j++, at += 4) {
          const v = atT[j]!;
          const x = x0 + u * sx - v * tx;
          const y = y0 + u * sy - v * ty;
          const z = zs + u * sz;
          const w = zt + v * tz;
          const rho2 = x * x + y * y;
          const rho = Math.sqrt(rho2);

          // e^{−jk0 R}/R straight across: the body of `expTable`.
          const R = Math.sqrt(rho2 + (z - w) * (z - w));
          const kR = k0 * R;
          const n = (kR * STEPS_PER_RAD + 0.5) | 0;
          const d = kR - n * STEP_RAD;
          const d2 = d * d;
          const c0 = COS_TABLE[n & 1023]!;
          const s0 = SIN_TABLE[n & 1023]!;
          const sd = d * (1 - d2 * (1 / 6 - d2 * (1 / 120)));
          const cd = 1 - d2 * (0.5 - d2 * (1 / 24));
          const dr = (c0 * cd - s0 * sd) / R;
          const di = -(s0 * cd + c0 * sd) / R;

          if (line) readLine(I, line, rho);
          else readTable(I, table, rho, z + w);
          const gr = I[8]!;
          const gi = I[9]!;
          let re = dot * dr + level * (I[0]! + A[0]! * gr - A[1]! * gi);
          let im = dot * di + level * (I[1]! + A[0]! * gi + A[1]! * gr);
          if (upright !== 0) {
            re += upright * (I[6]! + A[6]! * gr - A[7]! * gi);
            im += upright * (I[7]! + A[6]! * gi + A[7]! * gr);
          }
          if (turns && rho > 0) {
            // ρ̂ from source to observer; ρ/(R + ζ) with the static part.
            const turn = (sz * (x * tx + y * ty) - tz * (x * sx + y * sy)) / rho;
            const angle = rho / (Math.sqrt(rho2 + (z + w) * (z + w)) + z + w);
            re += turn * (I[4]! + angle * (A[4]! * gr - A[5]! * gi));
            im += turn * (I[5]! + angle * (A[4]! * gi + A[5]! * gr));
          }
          out[at] = re;
          out[at + 1] = im;
          out[at + 2] = dr + I[2]! + A[2]! * gr - A[3]! * gi;
          out[at + 3] = di + I[3]! + A[2]! * gi + A[3]! * gr;
        }
      }
    },
  };
}
