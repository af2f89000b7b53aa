import { expect, test } from "vitest";
import { buildBasis } from "../../../engine/basis/buildBasis.ts";
import { portVectors } from "../../../engine/basis/portVectors.ts";
import { C0_mPerS } from "../../../engine/constants.ts";
import type { PortInput, WireInput } from "../../../engine/contract.ts";
import { freeSpaceKernel } from "../../../engine/kernel/freeSpaceKernel.ts";
import type { PairKernel } from "../../../engine/kernel/PairKernel.ts";
import { perfectGroundKernel } from "../../../engine/kernel/perfectGroundKernel.ts";
import { fillMatrix } from "../../../engine/matrix/fillMatrix.ts";
import { findSymmetry } from "../../../engine/matrix/findSymmetry.ts";
import { levelFirst } from "../../../engine/matrix/levelFirst.ts";
import { wireKeys, wirePairKey } from "../../../engine/matrix/wirePairKey.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { matrixByRamps } from "../../support/matrixByRamps.ts";

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

function prepared(wires: readonly WireInput[], ports: readonly PortInput[] = [], ground = false) {
  const graph = joinWires(wires, ground);
  const { segments, portEnd } = segmentWires(wires, ports, graph, frequency_Hz, C0_mPerS / frequency_Hz);
  const basis = buildBasis(segments);
  return { segments, basis, symmetry: findSymmetry(segments, basis, portVectors(basis, portEnd), portEnd) };
}

const largest = (a: Float64Array) => a.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
const largestDifference = (a: Float64Array, b: Float64Array) =>
  a.reduce((m, v, i) => Math.max(m, Math.abs(v - b[i]!)), 0);

/**
 * What may go wrong from nodes to functions: a port inside a wire, junctions of many wires, ends on the ground and free, wires of
 * one segment and of two, some run the other way; conductors that lose, sheaths.
 */
const assorted: WireInput[] = [
  { id: "mast", from_m: [0, 0, 0], to_m: [0, 0, 9], radius_m: 2e-3, segments: 5, conductivity_SPerM: 2e6 },
  { id: "arm", from_m: [3, 1, 11], to_m: [0, 0, 9], radius_m: 1e-3, segments: 1 },
  { id: "leg", from_m: [0, 0, 9], to_m: [-2, 2, 8], radius_m: 1e-3, segments: 2, conductivity_SPerM: 5e7 },
  { id: "stub", from_m: [3, 1, 11], to_m: [3, 4, 11], radius_m: 1e-3, segments: 1 },
  {
    id: "clad",
    from_m: [6, 0, 2],
    to_m: [6, 5, 2],
    radius_m: 1e-3,
    segments: 4,
    conductivity_SPerM: 6e7,
    insulation: { radius_m: 2e-3, relativePermittivity: 3 },
  },
  { id: "post", from_m: [-7, 0, 8], to_m: [-7, 0, 0], radius_m: 1e-3, segments: 3 },
  { id: "bar", from_m: [-9, -3, 8], to_m: [-7, 0, 8], radius_m: 1e-3, segments: 2 },
];
const midway: PortInput = { id: "p", wire: "mast", position: 0.4, termination: { kind: "short" } };

test.each([
  ["free space", freeSpaceKernel(k), false],
  ["a perfect ground", perfectGroundKernel(k), true],
] as const)(
  "the matrix is that of its definition, function by function and half by half, in %s",
  (_, kernel, ground) => {
    const { segments, basis } = prepared(assorted, [midway], ground);
    const plain = matrixByRamps(segments, basis, frequency_Hz, kernel);
    for (const store of [undefined, new Map<string, Float64Array>()]) {
      const Z = fillMatrix(segments, basis, frequency_Hz, kernel, { store });
      expect(Z).toHaveLength(plain.length);
      expect(largestDifference(Z, plain)).toBeLessThan(1e-12 * largest(plain));
    }
  },
);

test("with a symmetry it is that matrix between the classes", () => {
  const wires = twoRings(4, 0.5).slice(0, -1);
  const { segments, basis, symmetry } = prepared(wires, [{ ...midway, wire: "up0", position: 0 }]);
  const plain = matrixByRamps(segments, basis, frequency_Hz, freeSpaceKernel(k));
  const { classOf, weight, count } = symmetry!;
  expect(count).toBeLessThan(0.7 * basis.count);
  const byClasses = new Float64Array(2 * count * count);
  classOf.forEach((c, i) => {
    classOf.forEach((d, j) => {
      if (c < 0 || d < 0) return;
      for (let part = 0; part < 2; part++)
        byClasses[2 * (c * count + d) + part]! += weight[i]! * weight[j]! * plain[2 * (i * basis.count + j) + part]!;
    });
  });
  for (const store of [undefined, new Map<string, Float64Array>()]) {
    const Z = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k), { store, symmetry });
    expect(largestDifference(Z, byClasses)).toBeLessThan(1e-11 * largest(plain));
  }
});

test("in another order of the unknowns it is the same matrix, its rows and columns moved", () => {
  const { segments, basis, symmetry } = prepared(twoRings(4).slice(0, -1), [{ ...midway, wire: "up0", position: 0 }]);
  for (const classes of [null, symmetry]) {
    const Z = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k), { symmetry: classes });
    const order = levelFirst(segments, basis, classes);
    const N = order.length;
    expect([...order]).not.toEqual([...order.keys()]);
    const moved = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k), { symmetry: classes, order });
    for (let i = 0; i < N; i++)
      for (let j = 0; j < N; j++)
        for (let part = 0; part < 2; part++)
          expect(moved[2 * (i * N + j) + part]).toBeCloseTo(Z[2 * (order[i]! * N + order[j]!) + part]!, 9);
  }
});

test("a block is the geometry's alone: of two wires alike but for metal and sheath one is integrated", () => {
  const bare = assorted.find((w) => w.id === "bar")!;
  const wires: WireInput[] = [
    bare,
    { ...bare, id: "steel", from_m: [20, 0, 8], to_m: [22, 3, 8], conductivity_SPerM: 1e6 },
    {
      ...bare,
      id: "clad",
      from_m: [-50, 0, 8],
      to_m: [-48, 3, 8],
      insulation: { radius_m: 2e-3, relativePermittivity: 3 },
    },
  ];
  const { segments, basis } = prepared(wires);
  const store = new Map<string, Float64Array>();
  const Z = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k), { store });
  expect(store.size).toBe(4);
  const plain = matrixByRamps(segments, basis, frequency_Hz, freeSpaceKernel(k));
  expect(largestDifference(Z, plain)).toBeLessThan(1e-9 * largest(plain));
});

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
  const kept = fillMatrix(segments, basis, frequency_Hz, counted, { store: new Map() });
  expect(largestDifference(plain, kept)).toBeLessThan(1e-9 * largest(plain));
  expect(calls).toBeLessThan(0.55 * plainCalls);
});

test("a pair met the other way round is read with its roles exchanged", () => {
  // Two equal fields at one height: each pair between them has its twin, turned half round, with the wires exchanged.
  const { segments, basis } = prepared(twoRings(6, 0));
  const plain = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k));
  const kept = fillMatrix(segments, basis, frequency_Hz, freeSpaceKernel(k), { store: new Map() });
  expect(largestDifference(plain, kept)).toBeLessThan(1e-9 * largest(plain));
});

test("pairs that differ in one distance only are told apart", () => {
  const key = (angle: number) => {
    const { segments } = prepared([
      { id: "p", from_m: [0, 0, 1], to_m: [2, 0, 1], radius_m: 1e-3, segments: 2 },
      { id: "q", from_m: [3 * Math.cos(angle), 3 * Math.sin(angle), 1], to_m: [0, 0, 4], radius_m: 1e-3, segments: 2 },
    ]);
    return wirePairKey(wireKeys(segments), 0, 1);
  };
  expect(key(1)).not.toBe(key(1.001));
  expect(key(1)).toBe(key(-1));
});

test("wires alike but for one cut or their thickness are told apart", () => {
  const names = [0.5, 0.501, 0.25].flatMap((position) =>
    [1e-3, 1.1e-3].map((radius_m) => {
      const wire: WireInput = { id: "w", from_m: [0, 0, 1], to_m: [5, 0, 1], radius_m, segments: 8 };
      const { segments } = prepared([wire], [{ ...midway, wire: "w", position }]);
      return wireKeys(segments).cuts[0];
    }),
  );
  expect(new Set(names).size).toBe(6);
  expect(names.every((name) => name!.length < 40)).toBe(true);
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
  fillMatrix(first.segments, first.basis, frequency_Hz, counted, { store });
  const cold = calls;
  calls = 0;
  const taller = wires.map((w) =>
    w.id === "up1" ? { ...w, to_m: [w.to_m[0], w.to_m[1], w.to_m[2] + 0.3] as const } : w,
  );
  const second = prepared(taller);
  const warm = fillMatrix(second.segments, second.basis, frequency_Hz, counted, { store });
  expect(calls).toBeLessThan(0.5 * cold);
  const fresh = fillMatrix(second.segments, second.basis, frequency_Hz, kernel);
  expect(largestDifference(warm, fresh)).toBeLessThan(1e-9 * largest(fresh));
});

test("the matrix is symmetric to the last digit", () => {
  const { segments, basis } = prepared(twoRings(3));
  const Z = fillMatrix(segments, basis, frequency_Hz, perfectGroundKernel(k));
  const n = basis.count;
  let worst = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++)
      for (let part = 0; part < 2; part++)
        worst = Math.max(worst, Math.abs(Z[2 * (i * n + j) + part]! - Z[2 * (j * n + i) + part]!));
  expect(worst).toBe(0);
});
