import { gaussLegendre } from "../quad/gaussLegendre.ts";
import { expTable } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";
import type { FieldPart } from "./FieldParts.ts";

const { node, weight } = gaussLegendre(5);
const e = new Float64Array(2);

/**
 * Segments in soil that are not level: leads to buried radials, stakes. By reciprocity, their far field is the field that a
 * plane wave from r̂ brings to them through the surface,
 *
 *   θ̂ wave: [ρ̂ sin α (1 − Γ_v) − ẑ cos α (1 + Γ_v)/ε] e^{jk cos α ρ̂·r} e^{jkwz},   φ̂ wave: φ̂ (1 + Γ_h) e^{…}
 *
 * (tangential E and normal εE continuous). Five points a segment: they are short against the wavelength in soil.
 */
export function buriedPart(
  segments: Segments,
  currents: Float64Array,
  k: number,
  chosen: readonly number[],
  epsRe: number,
  epsIm: number,
): FieldPart {
  const { start, tangent, length } = segments;
  const size = epsRe * epsRe + epsIm * epsIm;
  return {
    mirrored: () => false,
    setElevation() {},
    add(sum, { cosA, sinA, cosP, sinP, gamma, sink }) {
      for (const s of chosen) {
        const L = length[s]!;
        const tz = tangent[3 * s + 2]!;
        const along = tangent[3 * s]! * cosP + tangent[3 * s + 1]! * sinP;
        const across = tangent[3 * s + 1]! * cosP - tangent[3 * s]! * sinP;
        // t·[…] of the two waves
        const overRe = ((1 + gamma[0]!) * epsRe + gamma[1]! * epsIm) / size;
        const overIm = (gamma[1]! * epsRe - (1 + gamma[0]!) * epsIm) / size;
        const thetaRe = along * sinA * (1 - gamma[0]!) - tz * cosA * overRe;
        const thetaIm = -along * sinA * gamma[1]! - tz * cosA * overIm;
        const phiRe = across * (1 + gamma[2]!);
        const phiIm = across * gamma[3]!;
        let re = 0;
        let im = 0;
        for (let i = 0; i < node.length; i++) {
          const u = node[i]!;
          const x = start[3 * s]! + u * L * tangent[3 * s]!;
          const y = start[3 * s + 1]! + u * L * tangent[3 * s + 1]!;
          const z = start[3 * s + 2]! + u * L * tz;
          expTable(e, 0, k * (cosA * (x * cosP + y * sinP) + sink[0]! * z));
          const f = weight[i]! * L * Math.exp(-k * sink[1]! * z);
          const ir = currents[4 * s]! * (1 - u) + currents[4 * s + 2]! * u;
          const ii = currents[4 * s + 1]! * (1 - u) + currents[4 * s + 3]! * u;
          re += f * (ir * e[0]! - ii * e[1]!);
          im += f * (ir * e[1]! + ii * e[0]!);
        }
        sum[0]! += thetaRe * re - thetaIm * im;
        sum[1]! += thetaRe * im + thetaIm * re;
        sum[2]! += phiRe * re - phiIm * im;
        sum[3]! += phiRe * im + phiIm * re;
      }
    },
  };
}
