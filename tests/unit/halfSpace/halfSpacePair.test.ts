import { describe, expect, test } from "vitest";
import { buildPatches } from "../../../engine/kernel/halfSpace/buildPatches.ts";
import { buildTable } from "../../../engine/kernel/halfSpace/buildTable.ts";
import { DISTANT, FAR } from "../../../engine/kernel/halfSpace/distantPair.ts";
import { halfSpaceOf } from "../../../engine/kernel/halfSpace/HalfSpace.ts";
import { halfSpacePair } from "../../../engine/kernel/halfSpace/halfSpacePair.ts";
import { placeInAir } from "../../../engine/kernel/halfSpace/Placement.ts";
import { remaindersInAir } from "../../../engine/kernel/halfSpace/remaindersInAir.ts";
import { type Ends, pairByCutting } from "../../support/pairByCutting.ts";
import { straightSegments } from "../../support/straightSegments.ts";

const radius = 0.3e-3;

const segmentsOf = (...ends: readonly Ends[]) => straightSegments(radius, ...ends);

/** Wires near the soil: the hard pairs first, then each side of the two switches to coarser rules. */
const h = 0.008;
const L = 0.4;
const hub: [number, number, number] = [0, 0, h];
const pairs: readonly (readonly [string, Ends, Ends])[] = [
  ["a level segment and itself", [hub, [L, 0, h]], [hub, [L, 0, h]]],
  [
    "two in a row",
    [hub, [L, 0, h]],
    [
      [L, 0, h],
      [2 * L, 0, h],
    ],
  ],
  [
    "two in a row, head on",
    [hub, [L, 0, h]],
    [
      [2 * L, 0, h],
      [L, 0, h],
    ],
  ],
  ["opposite radials at the hub", [hub, [L, 0, h]], [hub, [-L, 0, h]]],
  [
    "side by side, of unequal length",
    [hub, [L, 0, h]],
    [
      [0.1, 0.02, h],
      [0.1 + 0.5 * L, 0.02, h],
    ],
  ],
  ["neighbouring radials at the hub", [hub, [L, 0, h]], [hub, [0.924 * L, 0.383 * L, h]]],
  [
    "crossing at two heights",
    [
      [-L, 0, h],
      [L, 0, h],
    ],
    [
      [0.1, -L, 2 * h],
      [0.2, L, 2 * h],
    ],
  ],
  ["an upright and itself", [hub, [0, 0, h + L]], [hub, [0, 0, h + L]]],
  ["upright and radial at the hub", [hub, [0, 0, h + L]], [hub, [L, 0, h]]],
  ["upright and radial towards the hub", [hub, [0, 0, h + L]], [[0, L, h], hub]],
  [
    "next upright piece and radial",
    [
      [0, 0, h + L],
      [0, 0, h + 2 * L],
    ],
    [hub, [L, 0, h]],
  ],
  ["a sloping segment and itself", [hub, [L, 0, h + 0.5 * L]], [hub, [L, 0, h + 0.5 * L]]],
  [
    "sloping and level",
    [hub, [L, 0, h + 0.5 * L]],
    [
      [-0.1, 0.1, h],
      [-0.1, -L, h],
    ],
  ],
  [
    "level, just nearer than the distant rule",
    [hub, [L, 0, h]],
    [
      [(DISTANT - 0.01) * L, 0, h],
      [(DISTANT + 0.98) * L, 0.1, h],
    ],
  ],
  [
    "level, just beyond",
    [hub, [L, 0, h]],
    [
      [(DISTANT + 0.1) * L, 0, h],
      [(DISTANT + 1.09) * L, 0.1, h],
    ],
  ],
  [
    "level, just nearer than the far rule",
    [hub, [L, 0, h]],
    [
      [(FAR - 0.1) * L, 0, h],
      [(FAR + 0.89) * L, 0.1, h],
    ],
  ],
  [
    "level, just beyond it",
    [hub, [L, 0, h]],
    [
      [(FAR + 0.1) * L, 0, h],
      [(FAR + 1.09) * L, 0.1, h],
    ],
  ],
  [
    "upright and level, some way off",
    [hub, [0, 0, h + L]],
    [
      [1.5, 0, h],
      [1.8, 0.2, h],
    ],
  ],
  [
    "two uprights",
    [hub, [0, 0, h + L]],
    [
      [5, 1, 1],
      [5, 1, 1 + L],
    ],
  ],
];

describe.each([
  { f: 7.1e6, er: 13, sigma: 0.005 },
  { f: 14.2e6, er: 3, sigma: 0.0001 },
  { f: 21.2e6, er: 81, sigma: 5 },
])("reflected moments at $f Hz over soil $er / $sigma", ({ f, er, sigma }) => {
  const space = halfSpaceOf(f, er, sigma);
  const remainders = remaindersInAir(buildTable(placeInAir(space), 6e-3, 12));
  const patches = buildPatches(placeInAir(space), 5e-3, 12, 3, 1e-8);
  const out = new Float64Array(10);

  test.each(pairs)("%s", (_, a, b) => {
    const want = pairByCutting(patches, a, b);
    out.fill(0);
    halfSpacePair(out, 0, segmentsOf(a, b), 0, 1, remainders);
    const V = Math.hypot(want[0]!, want[4]!);
    const S = Math.hypot(want[8]!, want[9]!);
    const offS = Math.hypot(out[8]! - want[8]!, out[9]! - want[9]!);
    let offV = 0;
    for (let p = 0; p < 4; p++) offV = Math.max(offV, Math.hypot(out[p]! - want[p]!, out[4 + p]! - want[4 + p]!));
    // The required 1e-4 of the result.
    expect(offS).toBeLessThan(1e-4 * S);
    expect(offV).toBeLessThan(1e-4 * V + 1e-12);
  });

  test.each(pairs)("%s: the same with the two exchanged", (_, a, b) => {
    out.fill(0);
    halfSpacePair(out, 0, segmentsOf(a, b), 0, 1, remainders);
    const other = new Float64Array(10);
    halfSpacePair(other, 0, segmentsOf(a, b), 1, 0, remainders);
    const size = Math.max(...out.map(Math.abs));
    for (const [i, j] of [
      [0, 0],
      [1, 2],
      [2, 1],
      [3, 3],
      [4, 4],
      [5, 6],
      [6, 5],
      [7, 7],
      [8, 8],
      [9, 9],
    ] as const)
      expect(Math.abs(out[i]! - other[j]!)).toBeLessThan(2e-6 * size);
  });
});
