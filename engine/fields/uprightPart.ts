import { expTable } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";
import type { FieldPart } from "./FieldParts.ts";
import { evenPart, oddPart } from "./linearIntegral.ts";

const e = new Float64Array(2);

/**
 * Upright segments. Those on one vertical line share their dependence on azimuth, so an azimuth cut costs one phase a
 * line. The downward ray turns the sign of phase and ψ, so both rays come from one evaluation.
 */
export function uprightPart(
  segments: Segments,
  currents: Float64Array,
  k: number,
  chosen: readonly number[],
): FieldPart {
  const { start, tangent, length } = segments;
  const lines: { x: number; y: number; members: number[] }[] = [];
  for (const s of chosen) {
    const x = start[3 * s]!;
    const y = start[3 * s + 1]!;
    const line = lines.find((u) => Math.abs(u.x - x) < 1e-9 && Math.abs(u.y - y) < 1e-9);
    if (line) line.members.push(s);
    else lines.push({ x, y, members: [s] });
  }
  const total = new Float64Array(2 * lines.length);
  return {
    setElevation({ sinA, gamma }) {
      const grounded = gamma[0] !== 0 || gamma[1] !== 0;
      for (let u = 0; u < lines.length; u++) {
        let re = 0;
        let im = 0;
        for (const s of lines[u]!.members) {
          const tz = tangent[3 * s + 2]!;
          const L = length[s]!;
          const psi = 0.5 * k * L * tz * sinA;
          const p2 = psi * psi;
          const even = 0.5 * evenPart(psi, p2);
          const odd = 0.5 * oddPart(psi, p2);
          const sr = even * (currents[4 * s]! + currents[4 * s + 2]!);
          const si = even * (currents[4 * s + 1]! + currents[4 * s + 3]!);
          const dr = -odd * (currents[4 * s + 3]! - currents[4 * s + 1]!);
          const di = odd * (currents[4 * s + 2]! - currents[4 * s]!);
          expTable(e, 0, k * (start[3 * s + 2]! + 0.5 * L * tz) * sinA);
          const c = tz * L * e[0]!;
          const v = tz * L * e[1]!;
          re += (sr + dr) * c - (si + di) * v;
          im += (sr + dr) * v + (si + di) * c;
          if (grounded) {
            const qr = (sr - dr) * c + (si - di) * v;
            const qi = (si - di) * c - (sr - dr) * v;
            re += gamma[0]! * qr - gamma[1]! * qi;
            im += gamma[0]! * qi + gamma[1]! * qr;
          }
        }
        total[2 * u] = re;
        total[2 * u + 1] = im;
      }
    },
    add(sum, { cosA, cosP, sinP }) {
      // θ̂ = (sin α cos φ, sin α sin φ, −cos α): an upright gives −cos α, on either ray.
      for (let u = 0; u < lines.length; u++) {
        expTable(e, 0, k * cosA * (cosP * lines[u]!.x + sinP * lines[u]!.y));
        sum[0]! -= cosA * (total[2 * u]! * e[0]! - total[2 * u + 1]! * e[1]!);
        sum[1]! -= cosA * (total[2 * u]! * e[1]! + total[2 * u + 1]! * e[0]!);
      }
    },
  };
}
