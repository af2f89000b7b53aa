import type { Segments } from "../wires/Segments.ts";
import type { FieldPart } from "./FieldParts.ts";
import { linearIntegral } from "./linearIntegral.ts";

const part = new Float64Array(2);

/** Segments at any slope: one integral for the direct ray, one for the downward ray with its reflection. */
export function slopingPart(
  segments: Segments,
  currents: Float64Array,
  k: number,
  chosen: readonly number[],
): FieldPart {
  const { start, tangent, length } = segments;
  return {
    mirrored: () => false,
    setElevation() {},
    add(sum, { cosA, sinA, cosP, sinP, gamma }) {
      for (const s of chosen) {
        const tx = tangent[3 * s]!;
        const ty = tangent[3 * s + 1]!;
        const tz = tangent[3 * s + 2]!;
        const L = length[s]!;
        const along = tx * cosP + ty * sinP;
        const psiLevel = 0.5 * k * L * cosA * along;
        const psiRise = 0.5 * k * L * sinA * tz;
        const level = k * cosA * (start[3 * s]! * cosP + start[3 * s + 1]! * sinP) + psiLevel;
        const rise = k * sinA * start[3 * s + 2]! + psiRise;
        const phi = ty * cosP - tx * sinP;
        linearIntegral(part, currents, 4 * s, L, level + rise, psiLevel + psiRise);
        const up = sinA * along - tz * cosA;
        sum[0]! += up * part[0]!;
        sum[1]! += up * part[1]!;
        sum[2]! += phi * part[0]!;
        sum[3]! += phi * part[1]!;
        linearIntegral(part, currents, 4 * s, L, level - rise, psiLevel - psiRise);
        // θ̂ of the downward ray is (−sin α cos φ, −sin α sin φ, −cos α).
        const down = -sinA * along - tz * cosA;
        sum[0]! += down * (gamma[0]! * part[0]! - gamma[1]! * part[1]!);
        sum[1]! += down * (gamma[0]! * part[1]! + gamma[1]! * part[0]!);
        sum[2]! += phi * (gamma[2]! * part[0]! - gamma[3]! * part[1]!);
        sum[3]! += phi * (gamma[2]! * part[1]! + gamma[3]! * part[0]!);
      }
    },
  };
}
