import { expect, test } from "vitest";
import { buildBasis } from "../../../engine/basis/buildBasis.ts";
import { C0_mPerS } from "../../../engine/constants.ts";
import type { WireInput } from "../../../engine/contract.ts";
import { freeSpaceKernel } from "../../../engine/kernel/freeSpaceKernel.ts";
import type { PairKernel } from "../../../engine/kernel/PairKernel.ts";
import { perfectGroundKernel } from "../../../engine/kernel/perfectGroundKernel.ts";
import { fillMatrix } from "../../../engine/matrix/fillMatrix.ts";
import { wireCutKeys, wirePairKey } from "../../../engine/matrix/wirePairKey.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";

const frequency_Hz = 7.1e6;
const k = (2 * Math.PI * frequency_Hz) / C0_mPerS;

/** Two uprights of unlike height on raised radials, and a sloping wire that fits no ring. */
function twoRings(radials: number, step_m = 0.5): WireInput[] {
  const wires: WireInput[] = [];
  [0, -8.4].forEach((x, e) => {
    const height = 3 + step_m * e;
    wires.push({
      id: `up${e}`,
      from_m: [x, 0, height],
      to_m: [x, 0, height + 10 + 0.4 * e],
      radius_m: 1e-3,
      segments: 7,
    });
    for (let r = 0; r < radials; r++) {
      const angle = (2 * Math.PI * (r + 0.5)) / radials;
      wires.push({
        id: `r${e}.${r}`,
        from_m: [x, 0, height],
        to_m: [x + 4 * Math.cos(angle), 4 * Math.sin(angle), height],
        radius_m: 8e-4,
        segments: 4,
      });
    }
  });
  wires.push({ id: "slope", from_m: [5, 1, 1], to_m: [9, 3, 6], radius_m: 1e-3, segments: 5 });
  return wires;
}

function prepared(wires: readonly WireInput[]) {
  const graph = joinWires(wires, false);
  const { segments } = segmentWires(wires, [], graph, frequency_Hz, C0_mPerS / frequency_Hz);
  return { segments, basis: buildBasis(segments) };
}

const largest = (a: Float64Array) => a.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
const largestDifference = (a: Float64Array, b: Float64Array) =>
  a.reduce((m, v, i) => Math.max(m, Math.abs(v - b[i]!)), 0);

test.each([
  ["free space", freeSpaceKernel(k)],
  ["a perfect ground", perfectGroundKernel(k)],
] as const)("pairs of one geometry are integrated once and the matrix is the same, in %s", (_, kernel) => {
  const { segments, basis } = prepared(twoRings(6));
  let calls = 0;
  const counted: PairKernel = (out, at, seg, s, t) => {
    calls++;
    kernel(out, at, seg, s, t);
  };
  const plain = fillMatrix(segments, basis, frequency_Hz, counted);
  const plainCalls = calls;
  calls = 0;
  const kept = fillMatrix(segments, basis, frequency_Hz, counted, new Map());
  expect(largestDifference(plain, kept)).toBeLessThan(1e-9 * largest(plain));
  expect(calls).toBeLessThan(0.55 * plainCalls);
});

test("a pair met the other way round is read with its roles exchanged", () => {
  // Two equal fields at one height: each pair between them has its twin, turned half round, with the wires exchanged.
  const { segments, basis } = prepared(twoRings(6, 0));
  const plain = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k));
  const kept = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k), new Map());
  expect(largestDifference(plain, kept)).toBeLessThan(1e-9 * largest(plain));
});

test("pairs that differ in one distance only are told apart", () => {
  const key = (angle: number) => {
    const { segments } = prepared([
      { id: "p", from_m: [0, 0, 1], to_m: [2, 0, 1], radius_m: 1e-3, segments: 2 },
      { id: "q", from_m: [3 * Math.cos(angle), 3 * Math.sin(angle), 1], to_m: [0, 0, 4], radius_m: 1e-3, segments: 2 },
    ]);
    return wirePairKey(segments, wireCutKeys(segments), 0, 1);
  };
  expect(key(1)).not.toBe(key(1.001));
  expect(key(1)).toBe(key(-1));
});

test("a kept store serves a later matrix, and only what moved is integrated again", () => {
  const kernel = freeSpaceKernel(k);
  let calls = 0;
  const counted: PairKernel = (out, at, seg, s, t) => {
    calls++;
    kernel(out, at, seg, s, t);
  };
  const wires = twoRings(6);
  const store = new Map<string, Float64Array>();
  const first = prepared(wires);
  fillMatrix(first.segments, first.basis, frequency_Hz, counted, store);
  const cold = calls;
  calls = 0;
  const taller = wires.map((w) =>
    w.id === "up1" ? { ...w, to_m: [w.to_m[0], w.to_m[1], w.to_m[2] + 0.3] as const } : w,
  );
  const second = prepared(taller);
  const warm = fillMatrix(second.segments, second.basis, frequency_Hz, counted, store);
  expect(calls).toBeLessThan(0.5 * cold);
  const fresh = fillMatrix(second.segments, second.basis, frequency_Hz, kernel);
  expect(largestDifference(warm, fresh)).toBeLessThan(1e-9 * largest(fresh));
});

test("the matrix is symmetric but for rounding", () => {
  const { segments, basis } = prepared(twoRings(3));
  const Z = fillMatrix(segments, basis, frequency_Hz, perfectGroundKernel(k));
  const n = basis.count;
  let worst = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++)
      for (let part = 0; part < 2; part++)
        worst = Math.max(worst, Math.abs(Z[2 * (i * n + j) + part]! - Z[2 * (j * n + i) + part]!));
  expect(worst).toBeLessThan(1e-15 * largest(Z));
});
