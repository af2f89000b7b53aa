import { describe, expect, test } from "vitest";
import { gaussLegendre } from "../../../engine/quad/gaussLegendre.ts";
import { addSlopingField } from "../../../engine/screen/addSlopingField.ts";
import type { VerticalLine } from "../../../engine/screen/ScreenInput.ts";
import { tabulateUpright } from "../../../engine/screen/tabulateUpright.ts";
import { uprightAt, uprightField } from "../../../engine/screen/uprightField.ts";
import { mast } from "../../support/mast.ts";

const k = (2 * Math.PI) / 40;

/** Two states with nothing regular about them, on uneven nodes; `base_m` lifts the line off the ground. */
function oddLine(base_m: number) {
  const z_m = Float64Array.of(0, 0.4, 1.1, 2, 3.3, 4.1, 6, 8, 9.5).map((z) => z + base_m);
  const current = Float64Array.from({ length: 4 * z_m.length }, (_, i) => Math.sin(1 + 1.7 * i) + 0.3 * (i % 3));
  return { x_m: 0, y_m: 0, radius_m: 1e-3, z_m, current };
}

/** ρ H_φ by quadrature of the field of current elements, ρ²/2π ∫ I (1 + jkR) e^{−jkR}/R³ dz, image included. */
function byQuadrature(
  line: ReturnType<typeof oddLine>,
  state: number,
  rho: number,
  straight = false,
): [number, number] {
  const { node, weight } = gaussLegendre(60);
  const { z_m, current } = line;
  let re = 0;
  let im = 0;
  for (let n = 0; n + 1 < z_m.length; n++) {
    const step = z_m[n + 1]! - z_m[n]!;
    const at = 2 * (state * z_m.length + n);
    for (let i = 0; i < node.length; i++) {
      const t = node[i]!;
      const high = straight ? t : Math.sin(k * step * t) / Math.sin(k * step);
      const low = straight ? 1 - t : Math.sin(k * step * (1 - t)) / Math.sin(k * step);
      const iRe = low * current[at]! + high * current[at + 2]!;
      const iIm = low * current[at + 1]! + high * current[at + 3]!;
      const R = Math.hypot(rho, z_m[n]! + t * step);
      const f = (weight[i]! * step * rho * rho) / (2 * Math.PI * R ** 3);
      const gRe = f * (Math.cos(k * R) + k * R * Math.sin(k * R));
      const gIm = f * (k * R * Math.cos(k * R) - Math.sin(k * R));
      re += iRe * gRe - iIm * gIm;
      im += iRe * gIm + iIm * gRe;
    }
  }
  return [re, im];
}

describe("uprightField", () => {
  test.each([0, 0.7])("is the field of the current's elements, base at %d m", (base) => {
    const line = oddLine(base);
    const field = uprightField(line, k, 2);
    const out = new Float64Array(6);
    for (const rho of [0.3, 1, 4, 15, 60]) {
      uprightAt(out, 2, field, k, 2, rho);
      for (let s = 0; s < 2; s++) {
        const [re, im] = byQuadrature(line, s, rho);
        expect(out[2 + 2 * s]).toBeCloseTo(re, 9);
        expect(out[3 + 2 * s]).toBeCloseTo(im, 9);
      }
    }
    expect([out[0], out[1]]).toEqual([0, 0]);
  });

  test("close to the foot it is the base current over 2π, or nothing where the line floats", () => {
    const out = new Float64Array(4);
    const line = oddLine(0);
    uprightAt(out, 0, uprightField(line, k, 2), k, 2, 0);
    expect(out[0]).toBeCloseTo(line.current[0]! / (2 * Math.PI), 12);
    uprightAt(out, 0, uprightField(oddLine(1), k, 2), k, 2, 0);
    out.forEach((v) => {
      expect(v).toBeCloseTo(0, 12);
    });
  });

  test("sinusoid and straight line between nodes differ by less than (kΔ)²/8 of the current", () => {
    const line = oddLine(0);
    const step = k * 2;
    for (const rho of [1, 4, 15]) {
      const [a, b] = byQuadrature(line, 0, rho);
      const [c, d] = byQuadrature(line, 0, rho, true);
      expect(Math.hypot(a - c, b - d)).toBeLessThan(((step * step) / 8) * 2 * Math.hypot(a, b));
      expect(Math.hypot(a - c, b - d)).toBeGreaterThan(0);
    }
  });

  /** Largest interpolation error of the table between its entries, over the largest value. */
  function tableError(line: VerticalLine, reach_m: number): number {
    const states = line.current.length / (2 * line.z_m.length);
    const field = uprightField(line, k, states);
    const table = tabulateUpright(field, k, states, reach_m);
    const exact = new Float64Array(2 * states);
    let worst = 0;
    let size = 0;
    for (let rho = 1e-3; rho <= reach_m; rho *= 1.003) {
      uprightAt(exact, 0, field, k, states, rho);
      const v = Math.sqrt(rho) * table.perRoot;
      const first = Math.min(Math.max(Math.floor(v) - 1, 0), table.entries - 4);
      for (let part = 0; part < 2 * states; part++) {
        let found = 0;
        for (let a = 0; a < 4; a++) {
          let share = 1;
          for (let b = 0; b < 4; b++) if (b !== a) share *= (v - first - b) / (a - b);
          found += share * table.value[2 * states * (first + a) + part]!;
        }
        worst = Math.max(worst, Math.abs(found - exact[part]!));
        size = Math.max(size, Math.abs(exact[part]!));
      }
    }
    return worst / size;
  }

  test("the table is within 1e-4 between its entries, within 5e-4 for a current that zigzags from node to node", () => {
    for (const height of [0.02, 0.1, 0.25, 0.45])
      for (const reach of [0.3, 1, 3]) {
        const line = mast(k, { x_m: 0, y_m: 0, height_m: 40 * height }, [[1, 0]]);
        expect(tableError(line, 40 * reach), `height ${height}, reach ${reach}`).toBeLessThan(1e-4);
      }
    expect(tableError(oddLine(0), 50)).toBeLessThan(5e-4);
  });
});

test("a sloping piece has the field of its current's elements, image included", () => {
  const from_m = Float64Array.of(1, -2, 3);
  const to_m = Float64Array.of(2.5, 0.5, 5);
  const current = Float64Array.of(0.7, -0.2, 0.3, 0.9);
  const h = new Float64Array(4);
  const point = { xRe: 4, xIm: 0, yRe: 1, yIm: 0 };
  addSlopingField(h, { from_m, to_m, radius_m: Float64Array.of(1e-3), current }, k, 1, point);

  // H = 2/4π ∫ I t × r (1 + jkR) e^{−jkR}/R³ ds, tangential parts.
  const d = [0, 1, 2].map((i) => to_m[i]! - from_m[i]!);
  const length = Math.hypot(...d);
  const { node, weight } = gaussLegendre(40);
  const found = new Float64Array(4);
  node.forEach((t, i) => {
    const [rx, ry, rz] = [4 - from_m[0]! - t * d[0]!, 1 - from_m[1]! - t * d[1]!, -from_m[2]! - t * d[2]!];
    const R = Math.hypot(rx, ry, rz);
    const low = Math.sin(k * length * (1 - t)) / Math.sin(k * length);
    const high = Math.sin(k * length * t) / Math.sin(k * length);
    const iRe = low * current[0]! + high * current[2]!;
    const iIm = low * current[1]! + high * current[3]!;
    const f = weight[i]! / (2 * Math.PI * R ** 3);
    const gRe = f * (Math.cos(k * R) + k * R * Math.sin(k * R));
    const gIm = f * (k * R * Math.cos(k * R) - Math.sin(k * R));
    const re = iRe * gRe - iIm * gIm;
    const im = iRe * gIm + iIm * gRe;
    const wx = d[1]! * rz - d[2]! * ry;
    const wy = d[2]! * rx - d[0]! * rz;
    found[0]! += wx * re;
    found[1]! += wx * im;
    found[2]! += wy * re;
    found[3]! += wy * im;
  });
  found.forEach((v, i) => {
    expect(h[i]).toBeCloseTo(v, 12);
  });
});
