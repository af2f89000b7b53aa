import { expect, test } from "vitest";
import { readBothWays, readStraight, straightIntegral } from "../../../engine/fields/straightIntegral.ts";
import { gaussLegendre } from "../../../engine/quad/gaussLegendre.ts";
import { straightSegments } from "../../support/straightSegments.ts";

/** An upright of unlike segments with a current that is linear in each and jumps nowhere. */
const cuts_m = [0.3, 0.5, 1.1, 2.4, 2.5, 4.9, 6.1, 9.8];
const segments = straightSegments(
  0.001,
  ...cuts_m.slice(1).map((z, i) => [[1, 2, cuts_m[i]!] as const, [1, 2, z] as const] as const),
);
const at = (i: number) => [Math.cos(0.7 * i) + 0.2 * i, Math.sin(1.1 * i)] as const;
const currents = Float64Array.from(cuts_m.slice(1).flatMap((_, i) => [...at(i), ...at(i + 1)]));

/** ∫ I e^{jkx(z − c)} dz by quadrature, twelve points a segment. */
function byQuadrature(k: number, x: number): [number, number] {
  const { node, weight } = gaussLegendre(12);
  const middle = 0.5 * (cuts_m[0]! + cuts_m.at(-1)!);
  let re = 0;
  let im = 0;
  for (let s = 0; s + 1 < cuts_m.length; s++) {
    const L = cuts_m[s + 1]! - cuts_m[s]!;
    for (let g = 0; g < node.length; g++) {
      const u = node[g]!;
      const phase = k * x * (cuts_m[s]! + u * L - middle);
      const [c, d] = [Math.cos(phase), Math.sin(phase)];
      const [ir, ii] = [0, 1].map((p) => (1 - u) * at(s)[p]! + u * at(s + 1)[p]!) as [number, number];
      re += weight[g]! * L * (ir * c - ii * d);
      im += weight[g]! * L * (ir * d + ii * c);
    }
  }
  return [re, im];
}

// k from a short piece to some three wavelengths, so that the series ends on an even term and on an odd one.
const ks = [0.01, 0.21, 0.35, 0.5, 1, 1.9];

test("the series of an upright is its integral to 1e-10, and knows where the middle is", () => {
  const out = new Float64Array(2);
  for (const k of ks) {
    const line = straightIntegral(segments, currents, k, 0, segments.count);
    expect([line.x_m, line.y_m, line.tz]).toEqual([1, 2, 1]);
    expect(line.z_m).toBeCloseTo(0.5 * (cuts_m[0]! + cuts_m.at(-1)!), 12);
    for (const x of [-1, -0.77, -0.1, 0, 0.2, 0.6, 1]) {
      readStraight(out, line, x);
      const [re, im] = byQuadrature(k, x);
      expect(Math.hypot(out[0]! - re, out[1]! - im)).toBeLessThan(1e-10 * 15);
    }
  }
});

test("both ways at once is the same as one way and the other", () => {
  const one = new Float64Array(2);
  const both = new Float64Array(4);
  const terms = new Set<number>();
  for (const k of ks) {
    const line = straightIntegral(segments, currents, k, 0, segments.count);
    terms.add((line.series.length / 2) % 2);
    for (const x of [-1, -0.77, 0, 1e-9, 0.2, 0.9999, 1]) {
      readBothWays(both, line, x);
      for (const [sign, from] of [
        [1, 0],
        [-1, 2],
      ] as const) {
        readStraight(one, line, sign * x);
        expect(both[from]).toBeCloseTo(one[0]!, 11);
        expect(both[from + 1]).toBeCloseTo(one[1]!, 11);
      }
    }
  }
  expect(terms.size).toBe(2);
});
