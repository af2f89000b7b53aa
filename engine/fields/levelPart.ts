import { expTable } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";
import type { FieldPart } from "./FieldParts.ts";
import { mirroredLines } from "./mirroredLines.ts";
import { readStraight, straightIntegral } from "./straightIntegral.ts";
import { straightRuns } from "./straightRuns.ts";

const e = new Float64Array(2);
const part = new Float64Array(2);

/**
 * Level segments: radials, in air or in soil. Direct and reflected ray have the same phase along the wire, so one integral
 * serves both, times a factor that depends on height and elevation alone and is formed once a height.
 *
 * @param overSoil whether what lies below z = 0 lies in soil
 */
export function levelPart(
  segments: Segments,
  currents: Float64Array,
  k: number,
  chosen: readonly number[],
  overSoil: boolean,
): FieldPart {
  const heights: number[] = [];
  const lines = straightRuns(segments, chosen).map(([first, past]) =>
    straightIntegral(segments, currents, k, first, past),
  );
  const heightOf = Int32Array.from(lines, ({ z_m: z }) => {
    const known = heights.findIndex((h) => Math.abs(h - z) < 1e-9);
    return known >= 0 ? known : heights.push(z) - 1;
  });
  // Per height: e^{jkz sin α} − Γ_v e^{−jkz sin α} (θ̂ of the downward ray is turned) and e^{…} + Γ_h e^{−…}.
  const factor = new Float64Array(4 * heights.length);
  return {
    mirrored: () => mirroredLines(lines),
    setElevation({ sinA, gamma, sink }) {
      heights.forEach((z, h) => {
        if (overSoil && z < 0) {
          // In soil: what passes through the surface, e^{jkwz} (1 − Γ_v) and e^{jkwz} (1 + Γ_h).
          expTable(e, 0, k * z * sink[0]!);
          const decay = Math.exp(-k * z * sink[1]!);
          const c = decay * e[0]!;
          const s = decay * e[1]!;
          factor[4 * h] = c * (1 - gamma[0]!) + s * gamma[1]!;
          factor[4 * h + 1] = s * (1 - gamma[0]!) - c * gamma[1]!;
          factor[4 * h + 2] = c * (1 + gamma[2]!) - s * gamma[3]!;
          factor[4 * h + 3] = s * (1 + gamma[2]!) + c * gamma[3]!;
          return;
        }
        expTable(e, 0, k * z * sinA);
        const c = e[0]!;
        const s = e[1]!;
        factor[4 * h] = c - (gamma[0]! * c + gamma[1]! * s);
        factor[4 * h + 1] = s - (gamma[1]! * c - gamma[0]! * s);
        factor[4 * h + 2] = c + (gamma[2]! * c + gamma[3]! * s);
        factor[4 * h + 3] = s + (gamma[3]! * c - gamma[2]! * s);
      });
    },
    add(sum, { cosA, sinA, cosP, sinP }) {
      for (let i = 0; i < lines.length; i++) {
        const line = lines[i]!;
        const along = line.tx * cosP + line.ty * sinP;
        readStraight(part, line, cosA * along);
        expTable(e, 0, k * cosA * (line.x_m * cosP + line.y_m * sinP));
        const re = part[0]! * e[0]! - part[1]! * e[1]!;
        const im = part[0]! * e[1]! + part[1]! * e[0]!;
        const h = 4 * heightOf[i]!;
        const theta = sinA * along;
        const phi = line.ty * cosP - line.tx * sinP;
        sum[0]! += theta * (factor[h]! * re - factor[h + 1]! * im);
        sum[1]! += theta * (factor[h]! * im + factor[h + 1]! * re);
        sum[2]! += phi * (factor[h + 2]! * re - factor[h + 3]! * im);
        sum[3]! += phi * (factor[h + 2]! * im + factor[h + 3]! * re);
      }
    },
  };
}
