import { describe, expect, test } from "vitest";
import { lossyMoments } from "../../../engine/kernel/lossyMoments.ts";
import { FAR_RATIO, MIDDLE_RATIO, pairMoments } from "../../../engine/kernel/pairMoments.ts";
import { momentsByCutting } from "../../support/momentsByCutting.ts";
import type { Ends } from "../../support/pairByCutting.ts";
import { straightSegments } from "../../support/straightSegments.ts";

const RADIUS_M = 1e-3;
const L = 0.1;
const at = (x: number, y = 0, z = -1): [number, number, number] => [x * L, y * L, z];
const one: Ends = [at(0), at(1)];
type Pair = readonly [name: string, first: Ends, second: Ends, withRadius: boolean];
const pairs: readonly Pair[] = [
  ["itself", one, one, true],
  ["the next in the row", one, [at(1), at(2)], true],
  ["the opposite one", one, [at(0), at(-1)], true],
  ["one square to its end", one, [at(0), at(0, 0.4)], true],
  ["one at 45 degrees", one, [at(0), at(0.7, 0.7)], true],
  ["one beside it", one, [at(0.3, 0.1), at(0.9, 0.1)], false],
  ["just within the middle ratio", one, [at(MIDDLE_RATIO - 0.1), at(MIDDLE_RATIO - 0.1, 1)], false],
  ["just beyond it", one, [at(MIDDLE_RATIO + 0.1), at(MIDDLE_RATIO + 0.1, 1)], false],
  ["just within the far ratio", one, [at(FAR_RATIO - 0.1), at(FAR_RATIO + 0.9)], false],
  ["just beyond that", one, [at(FAR_RATIO + 0.1), at(FAR_RATIO + 1.1)], false],
];
const out = new Float64Array(8);
const still = new Float64Array(8);

/** ∫∫ u^p u'^q e^{−jkR}/R, 1/R with the radius in it or not. */
function byCutting(first: Ends, second: Ends, kRe: number, kIm: number, radius: number): number[] {
  const distance = (p: readonly number[], q: readonly number[]) =>
    Math.hypot(p[0]! - q[0]!, p[1]! - q[1]!, p[2]! - q[2]!);
  return momentsByCutting(
    first,
    second,
    (to, p, q) => {
      const R = distance(p, q);
      const size = Math.exp(kIm * R);
      to[0] = R < 1e-8 ? kIm + 1 / radius : (size * Math.cos(kRe * R) - 1) / R + 1 / Math.hypot(R, radius);
      to[1] = R < 1e-8 ? -kRe : (-size * Math.sin(kRe * R)) / R;
      to[2] = to[0];
      to[3] = to[1];
    },
    (p, q) => Math.max(distance(p, q), 0.4 * RADIUS_M),
    { small: 0.9, points: 8 },
  );
}

/** Largest difference from `out`, relative to the moment that stands there without phase and decay. */
function off(want: readonly number[], first: Ends, second: Ends): number {
  pairMoments(still, straightSegments(RADIUS_M, first, second), 0, first === second ? 0 : 1, false, 1e-9);
  const apart = (p: number) => Math.hypot(out[p]! - want[p]!, out[4 + p]! - want[4 + p]!);
  return Math.max(...[0, 1, 2, 3].map(apart)) / still[0]!;
}

/*
 * Found: 3e-5 and less up to |k|L = 4 for segments that meet at an angle, 1e-7 for a segment on itself, 1e-9 apart; and at
 * the far rules 4e-5 where kL just stays below a step of points. A segment beside another by a tenth: 2e-5.
 */
describe.each([0.1, 0.26, 0.4, 1, 2.5, 4, 8])("moments in an absorbing medium, |k|L = %d", (kL) => {
  test.each(pairs)("%s", (_, first, second, withRadius) => {
    const self = first === second ? 0 : 1;
    for (const angle of [0, 0.3, Math.PI / 4]) {
      const kRe = (kL / L) * Math.cos(angle);
      const kIm = -(kL / L) * Math.sin(angle);
      lossyMoments(out, straightSegments(RADIUS_M, first, second), 0, self, false, kRe, kIm);
      expect(off(byCutting(first, second, kRe, kIm, withRadius ? RADIUS_M : 0), first, second)).toBeLessThan(
        kL > 4 ? 2e-4 : 6e-5,
      );
    }
  });

  test("its own image, 5 and 50 mm below the surface and deeper than the near rule goes", () => {
    for (const depth of [0.005, 0.05, 0.3]) {
      const kRe = (kL / L) * Math.cos(0.5);
      const kIm = -(kL / L) * Math.sin(0.5);
      const here: Ends = [at(0, 0, -depth), at(1, 0, -depth)];
      const image: Ends = [at(0, 0, depth), at(1, 0, depth)];
      lossyMoments(out, straightSegments(RADIUS_M, here), 0, 0, true, kRe, kIm);
      expect(off(byCutting(here, image, kRe, kIm, 0), here, image)).toBeLessThan(6e-5);
    }
  });
});

/** Each by its own rule; the larger of the two errors is that of pairMoments for a segment on itself, 1e-4 at kL = 0.26. */
test.each(pairs)("without loss the moments are those of air: %s", (_, first, second) => {
  const self = first === second ? 0 : 1;
  const want = new Float64Array(8);
  for (const kL of [0.03, 0.1, 0.26]) {
    const segments = straightSegments(RADIUS_M, first, second);
    lossyMoments(out, segments, 0, self, false, kL / L, 0);
    pairMoments(want, segments, 0, self, false, kL / L);
    expect(off([...want], first, second)).toBeLessThan(3e-3 * kL * kL + 1e-9);
  }
});
