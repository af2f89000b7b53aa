import { expTable } from "../special/expTable.ts";
import type { PanelKernel } from "./PanelKernel.ts";

const phase = new Float64Array(2);

/**
 * Kernels between points of two wires over a perfect ground, g(R) = e^{−jkR}/R straight across and g(R') by way of the image,
 *
 *   t·G·t' = t·t' g(R) + (t_z t'_z − t_h·t'_h) g(R'),   K = g(R) − g(R').
 */
export function panelsOverImage(k: number): PanelKernel {
  const medium = { k, k1: 0, k1Im: 0 };
  return {
    medium: () => medium,
    read(out, { start, tangent }, s, atS, t, atT) {
      const sx = tangent[3 * s]!;
      const sy = tangent[3 * s + 1]!;
      const sz = tangent[3 * s + 2]!;
      const tx = tangent[3 * t]!;
      const ty = tangent[3 * t + 1]!;
      const tz = tangent[3 * t + 2]!;
      const dot = sx * tx + sy * ty + sz * tz;
      const turned = sz * tz - sx * tx - sy * ty;
      const x0 = start[3 * s]! - start[3 * t]!;
      const y0 = start[3 * s + 1]! - start[3 * t + 1]!;
      const zs = start[3 * s + 2]!;
      const zt = start[3 * t + 2]!;
      for (let i = 0, at = 0; i < atS.length; i++) {
        const u = atS[i]!;
        const z = zs + u * sz;
        for (let j = 0; j < atT.length; j++, at += 4) {
          const v = atT[j]!;
          const x = x0 + u * sx - v * tx;
          const y = y0 + u * sy - v * ty;
          const w = zt + v * tz;
          const rho2 = x * x + y * y;
          const R = Math.sqrt(rho2 + (z - w) * (z - w));
          expTable(phase, 0, k * R);
          const gr = phase[0]! / R;
          const gi = -phase[1]! / R;
          const Q = Math.sqrt(rho2 + (z + w) * (z + w));
          expTable(phase, 0, k * Q);
          const hr = phase[0]! / Q;
          const hi = -phase[1]! / Q;
          out[at] = dot * gr + turned * hr;
          out[at + 1] = dot * gi + turned * hi;
          out[at + 2] = gr - hr;
          out[at + 3] = gi - hi;
        }
      }
    },
  };
}
