import { expTable } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";
import type { FieldPart } from "./FieldParts.ts";
import { mirroredLines } from "./mirroredLines.ts";
import { readBothWays, straightIntegral } from "./straightIntegral.ts";
import { straightRuns } from "./straightRuns.ts";

const e = new Float64Array(2);
const both = new Float64Array(4);

/**
 * Upright segments. What stands in one line is one function of sin α, its series formed once; all on one vertical share
 * their dependence on azimuth, so an azimuth cut costs one phase a vertical. The downward ray sees the same function at
 * −sin α.
 */
export function uprightPart(
  segments: Segments,
  currents: Float64Array,
  k: number,
  chosen: readonly number[],
): FieldPart {
  const lines = straightRuns(segments, chosen).map(([first, past]) =>
    straightIntegral(segments, currents, k, first, past),
  );
  const verticals: { x_m: number; y_m: number }[] = [];
  const verticalOf = lines.map(({ x_m, y_m }) => {
    const known = verticals.findIndex((u) => Math.abs(u.x_m - x_m) < 1e-9 && Math.abs(u.y_m - y_m) < 1e-9);
    return known >= 0 ? known : verticals.push({ x_m, y_m }) - 1;
  });
  const total = new Float64Array(2 * verticals.length);
  return {
    mirrored: () => mirroredLines(lines),
    setElevation({ sinA, gamma }) {
      const grounded = gamma[0] !== 0 || gamma[1] !== 0;
      total.fill(0);
      for (let i = 0; i < lines.length; i++) {
        const line = lines[i]!;
        readBothWays(both, line, line.tz * sinA);
        expTable(e, 0, k * line.z_m * sinA);
        const c = line.tz * e[0]!;
        const s = line.tz * e[1]!;
        const u = 2 * verticalOf[i]!;
        total[u]! += both[0]! * c - both[1]! * s;
        total[u + 1]! += both[0]! * s + both[1]! * c;
        if (grounded) {
          const re = both[2]! * c + both[3]! * s;
          const im = both[3]! * c - both[2]! * s;
          total[u]! += gamma[0]! * re - gamma[1]! * im;
          total[u + 1]! += gamma[0]! * im + gamma[1]! * re;
        }
      }
    },
    add(sum, { cosA, cosP, sinP }) {
      // θ̂ = (sin α cos φ, sin α sin φ, −cos α): an upright gives −cos α, on either ray.
      for (let u = 0; u < verticals.length; u++) {
        const { x_m, y_m } = verticals[u]!;
        expTable(e, 0, k * cosA * (cosP * x_m + sinP * y_m));
        sum[0]! -= cosA * (total[2 * u]! * e[0]! - total[2 * u + 1]! * e[1]!);
        sum[1]! -= cosA * (total[2 * u]! * e[1]! + total[2 * u + 1]! * e[0]!);
      }
    },
  };
}
