import { describe, expect, test } from "vitest";
import { buildBasis } from "../../../engine/basis/buildBasis.ts";
import { C0_mPerS } from "../../../engine/constants.ts";
import { withRadials } from "../../../engine/index.ts";
import { buildTable } from "../../../engine/kernel/halfSpace/buildTable.ts";
import { halfSpaceOf } from "../../../engine/kernel/halfSpace/HalfSpace.ts";
import { keptKernels } from "../../../engine/kernel/halfSpace/keptKernels.ts";
import { placeInAir } from "../../../engine/kernel/halfSpace/Placement.ts";
import { halfSpaceKernel } from "../../../engine/kernel/halfSpaceKernel.ts";
import { halfSpacePanels } from "../../../engine/kernel/halfSpacePanels.ts";
import type { PanelKernel } from "../../../engine/kernel/PanelKernel.ts";
import { panelsOverImage } from "../../../engine/kernel/panelsOverImage.ts";
import { perfectGroundKernel } from "../../../engine/kernel/perfectGroundKernel.ts";
import { surroundings } from "../../../engine/kernel/surroundings.ts";
import { addPanels } from "../../../engine/matrix/addPanels.ts";
import { fillMatrix } from "../../../engine/matrix/fillMatrix.ts";
import { panelGap } from "../../../engine/matrix/panelGap.ts";
import { panelPoints } from "../../../engine/matrix/panelPoints.ts";
import { wirePanels } from "../../../engine/matrix/wirePanels.ts";
import { gaussLegendre } from "../../../engine/quad/gaussLegendre.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import type { Segments } from "../../../engine/wires/Segments.ts";
import { segmentDistance } from "../../../engine/wires/segmentDistance.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { soilAround } from "../../../engine/wires/soilAround.ts";
import { wiresFromPlan } from "../../../engine/wires/wiresFromPlan.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { okValue } from "../../support/okValue.ts";
import type { Ends } from "../../support/pairByCutting.ts";
import { straightSegments } from "../../support/straightSegments.ts";

/** Segments of a wire, crowded at one end. */
const LENGTHS = Float64Array.of(0.1, 0.15, 0.25, 0.4, 0.5, 0.5, 0.55, 0.55);
const WIRE_M = LENGTHS.reduce((a, b) => a + b);
const whole = wirePanels(undefined, LENGTHS);

/** ∫ over the wire of (h_i f, h'_i f) for all nodes, by twelve points a segment. */
function byNodes(f: (x: number) => number) {
  const { node, weight } = gaussLegendre(12);
  const hat = new Float64Array(LENGTHS.length + 1);
  const slope = new Float64Array(LENGTHS.length + 1);
  let from = 0;
  for (const [s, L] of LENGTHS.entries()) {
    node.forEach((u, g) => {
      const value = weight[g]! * f(from + u * L);
      hat[s]! += (1 - u) * L * value;
      hat[s + 1]! += u * L * value;
      slope[s]! -= value;
      slope[s + 1]! += value;
    });
    from += L;
  }
  return { hat, slope };
}

describe("a panel's rule", () => {
  test.each([2, 3, 5, 8, 10])("carries what %i points hold exactly, and no more", (points) => {
    const { at_m, hat, slope } = whole.rule(points);
    const missed = (f: (x: number) => number) => {
      const want = byNodes(f);
      let worst = 0;
      for (let i = 0; i <= LENGTHS.length; i++)
        for (const [carried, exact] of [
          [hat, want.hat],
          [slope, want.slope],
        ] as const) {
          let sum = 0;
          at_m.forEach((x, q) => {
            sum += carried[q * (LENGTHS.length + 1) + i]! * f(x);
          });
          worst = Math.max(worst, Math.abs(sum - exact[i]!));
        }
      return worst;
    };
    expect(missed((x) => (x / WIRE_M) ** (points - 1))).toBeLessThan(1e-13);
    expect(missed((x) => (x / WIRE_M) ** points)).toBeGreaterThan(1e-8);
  });

  test("the halves together are the whole", () => {
    const [one, other] = whole.halves();
    expect([one.first, one.last, other.first, other.last]).toEqual([0, 4, 4, 8]);
    expect(one.from_m + one.length_m).toBeCloseTo(other.from_m, 12);
    const f = (x: number) => (x - 1) ** 2;
    const want = byNodes(f);
    const sums = new Float64Array(9);
    for (const half of [one, other]) {
      const { at_m, hat } = half.rule(3);
      at_m.forEach((x, q) => {
        for (let i = 0; i < 5; i++) sums[half.first + i]! += hat[q * 5 + i]! * f(x);
      });
    }
    sums.forEach((v, i) => {
      expect(v).toBeCloseTo(want.hat[i]!, 12);
    });
  });
});

const h = 0.02;
const DEEP = 0.05;
/** Two wires as long as LENGTHS, the second pushed away from the first by its `out` until they are `gap` apart. */
const kinds: readonly (readonly [string, Ends, Ends, readonly [number, number]])[] = [
  ["in a row", along([0, 0, h], [1, 0, 0]), along([0, 0, h], [1, 0, 0]), [1, 0]],
  ["side by side", along([0, 0, h], [1, 0, 0]), along([0.3, 0, h], [1, 0, 0]), [0, 1]],
  ["askew at two heights", along([0, 0, h], [0.8, 0.6, 0]), along([0, 0, 1.5], [-0.6, 0.8, 0]), [0.6, -0.8]],
  ["upright and radial", along([0, 0, 0.01], [0, 0, 1]), along([0, 0, h], [0.28, 0.96, 0]), [1, 0]],
  ["two uprights", along([0, 0, 0.01], [0, 0, 1]), along([0, 0, 1], [0, 0, 1]), [0, 1]],
  ["sloping and level", along([0, 0, 0.5], [0.48, 0.64, 0.6]), along([0, 0, h], [1, 0, 0]), [-1, 0]],
  ["in soil, in a row", along([0, 0, -DEEP], [1, 0, 0]), along([0, 0, -DEEP], [1, 0, 0]), [1, 0]],
  ["in soil, side by side", along([0, 0, -DEEP], [1, 0, 0]), along([0.3, 0, -DEEP], [0.6, 0.8, 0]), [0, 1]],
  ["in soil, level and downwards", along([0, 0, -DEEP], [1, 0, 0]), along([0, 0, -0.02], [0, 0, -1]), [-0.6, -0.8]],
  ["in soil, downwards and sloping", along([0, 0, -0.02], [0, 0, -1]), along([0, 0, -0.02], [0.8, 0, -0.6]), [1, 0]],
  ["upright, radial in soil", along([0, 0, 0.01], [0, 0, 1]), along([0, 0, -DEEP], [0.28, 0.96, 0]), [1, 0]],
  ["radial in soil, sloping in air", along([0, 0, -DEEP], [0.6, 0.8, 0]), along([0, 0, h], [0.8, 0, 0.6]), [0, -1]],
];

function along(from: readonly [number, number, number], t: readonly [number, number, number]): Ends {
  return [from, [from[0] + t[0] * WIRE_M, from[1] + t[1] * WIRE_M, from[2] + t[2] * WIRE_M]];
}

function apartBy(gap_m: number, first: Ends, second: Ends, out: readonly [number, number]): Segments {
  const pushed = (by: number) =>
    straightSegments(
      1e-3,
      first,
      second.map(([x, y, z]) => [x + by * out[0], y + by * out[1], z] as const) as unknown as Ends,
    );
  let [low, high] = [0, 60];
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (panelGap(pushed(middle), 0, whole, 1, whole) < gap_m) low = middle;
    else high = middle;
  }
  return pushed(high);
}

/** The block of two whole wires with `points` each, and with every segment integrated by itself to rounding. */
function bothWays(segments: Segments, panels: PanelKernel, points: number, scales: { vector: number; scalar: number }) {
  const nodes = LENGTHS.length + 1;
  const quick = new Float64Array(2 * nodes * nodes);
  addPanels(quick, nodes, segments, 0, whole, points, 1, whole, points, panels, scales);
  const plain = new Float64Array(2 * nodes * nodes);
  const { node, weight } = gaussLegendre(6);
  const at: number[] = [];
  const ramps: (readonly [number, number, number])[] = [];
  let from = 0;
  for (const [s, L] of LENGTHS.entries()) {
    node.forEach((u, g) => {
      for (const end of [0, 1]) ramps.push([s + end, weight[g]! * L * (end ? u : 1 - u), weight[g]! * (end ? 1 : -1)]);
      at.push(from + u * L);
    });
    from += L;
  }
  const points_m = Float64Array.from(at);
  const kernel = new Float64Array(4 * at.length ** 2);
  panels.read(kernel, segments, 0, points_m, 1, points_m);
  ramps.forEach(([i, hi, di], p) => {
    ramps.forEach(([j, hj, dj], q) => {
      const g = 4 * ((p >> 1) * at.length + (q >> 1));
      const to = 2 * (i * nodes + j);
      plain[to]! += scales.scalar * di * dj * kernel[g + 3]! - scales.vector * hi * hj * kernel[g + 1]!;
      plain[to + 1]! += scales.vector * hi * hj * kernel[g]! - scales.scalar * di * dj * kernel[g + 2]!;
    });
  });
  return { quick, plain };
}

const soils = [
  { f: 7.1e6, er: 13, sigma: 0.005 },
  { f: 14.2e6, er: 3, sigma: 0.0001 },
  { f: 14.2e6, er: 80, sigma: 0.001 },
  { f: 28.4e6, er: 5, sigma: 0.001 },
  { f: 21.2e6, er: 81, sigma: 5 },
].map(({ f, er, sigma }) => {
  const table = buildTable(placeInAir(halfSpaceOf(f, er, sigma)), 6e-3, 80);
  const buried = keptKernels(f, er, sigma, 80, { deepest_m: DEEP + WIRE_M, level_m: [DEEP], sloping: true });
  const panels = halfSpacePanels(table, buried);
  return { where: `${f} Hz over soil ${er} / ${sigma}`, er, kinds, panels, pairs: halfSpaceKernel(table, buried) };
});
const inAir = kinds.filter(([, a, b]) => [...a, ...b].every(([, , z]) => z >= 0));
const images = [7.1e6, 28.4e6].map((f) => {
  const k = (2 * Math.PI * f) / C0_mPerS;
  const where = `${f} Hz over a perfect ground`;
  return { where, er: 1, kinds: inAir, panels: panelsOverImage(k), pairs: perfectGroundKernel(k) };
});

describe.each([...soils, ...images])("panels at $where", ({ er, kinds, panels, pairs }) => {
  const mediumOf = (segments: Segments) => panels.medium(segments, 0, 0, WIRE_M, 1, 0, WIRE_M)!;
  test.each(kinds)(
    "%s: to 5e-5 of 1/R, currents and charges, with as many points as are held enough",
    (_, a, b, out) => {
      let served = 0;
      for (const gap of [0.6, 1, 1.5, 2, 3, 5, 10]) {
        const segments = apartBy(gap * WIRE_M, a, b, out);
        const points = panelPoints(WIRE_M, gap * WIRE_M, mediumOf(segments));
        if (points === 0) continue;
        served++;
        for (const scales of [
          { vector: 1, scalar: 0 },
          { vector: 0, scalar: 1 },
        ]) {
          const { quick, plain } = bothWays(segments, panels, points, scales);
          // What nodes may have with each other: lengths of their functions and 1/R; 4 ramps of charge.
          const nodes = LENGTHS.length + 1;
          const reach = (i: number) => (scales.scalar ? 2 : 0.5 * ((LENGTHS[i - 1] ?? 0) + (LENGTHS[i] ?? 0)));
          for (let i = 0; i < nodes; i++)
            for (let j = 0; j < nodes; j++) {
              const size = (reach(i) * reach(j)) / (gap * WIRE_M);
              for (const at of [2 * (i * nodes + j), 2 * (i * nodes + j) + 1])
                expect(Math.abs(quick[at]! - plain[at]!)).toBeLessThan(5e-5 * size);
            }
        }
      }
      if (er < 50 && mediumOf(apartBy(WIRE_M, a, b, out)).k < 1.5) expect(served).toBeGreaterThan(4);
    },
  );

  test.each(kinds)("%s: between points the kernels are what short segments have with each other", (_, a, b, out) => {
    const d = 2e-4;
    const far = apartBy(2, a, b, out);
    const short = { ...far, length: new Float64Array(2).fill(d) };
    const moments = new Float64Array(10);
    pairs(moments, 0, short, 0, 1);
    const point = new Float64Array(4);
    panels.read(point, far, 0, Float64Array.of(0.5 * d), 1, Float64Array.of(0.5 * d));
    for (const [i, k] of [0, 4, 8, 9].entries()) expect(Math.abs(moments[k]! / d ** 2 - point[i]!)).toBeLessThan(2e-6);
  });
});

test("panels that pass through the surface, or hang in soil against one in air, are not served", () => {
  const [f, er, sigma] = [7.1e6, 13, 0.005];
  const table = buildTable(placeInAir(halfSpaceOf(f, er, sigma)), 6e-3, 40);
  const buried = keptKernels(f, er, sigma, 40, { deepest_m: 4, level_m: [DEEP], sloping: true });
  const segments = straightSegments(
    1e-3,
    [
      [0, 0, 1],
      [0, 0, -1],
    ],
    [
      [9, 0, 1],
      [9, 5, 1],
    ],
  );
  const panels = halfSpacePanels(table, buried);
  expect(panels.medium(segments, 0, 0, 2, 1, 0, 5)).toBeNull();
  expect(panels.medium(segments, 0, 0, 1, 1, 0, 5)).not.toBeNull();
  expect(panels.medium(segments, 0, 1, 2, 1, 0, 5)).toBeNull();
  expect(panels.medium(segments, 1, 0, 5, 0, 1, 2)).toBeNull();
  expect(halfSpacePanels(table).medium(segments, 0, 0, 2, 1, 0, 5)).toBeNull();
});

test("too near, or too long for the phase: none are enough", () => {
  const panels = { k: 0.2, k1: 0.8, k1Im: -0.2 };
  expect(panelPoints(2, 0.8, panels)).toBe(0);
  expect(panelPoints(2, 4, panels)).toBeGreaterThan(3);
  expect(panelPoints(2, 40, panels)).toBeLessThan(panelPoints(2, 3, panels));
  expect(panelPoints(80, 400, panels)).toBe(0);
});

test("the gap between two panels is the distance of the straight pieces they are", () => {
  const [one, other] = whole.halves();
  let seed = 7;
  const random = () => {
    seed = (seed * 16807) % 2147483647;
    return (8 * seed) / 2147483647 - 4;
  };
  const piece = (s: Segments, w: number, from: number, L: number) =>
    [from, from + L].map((x) => [0, 1, 2].map((c) => s.start[3 * w + c]! + x * s.tangent[3 * w + c]!)) as never as Ends;
  for (let i = 0; i < 200; i++) {
    const end = (): Ends => [
      [random(), random(), random()],
      [random(), random(), random()],
    ];
    const first = end();
    const shift = [random(), random(), random()] as const;
    // Every fourth pair parallel.
    const second = i % 4 ? end() : (first.map((p) => p.map((x, c) => x + shift[c]!)) as never as Ends);
    const segments = straightSegments(1e-3, first, second);
    const p = piece(segments, 0, one.from_m, one.length_m);
    const q = piece(segments, 1, other.from_m, other.length_m);
    expect(panelGap(segments, 0, one, 1, other)).toBeCloseTo(segmentDistance(p[0], p[1], q[0], q[1]), 9);
  }
});

describe("the matrix with panels is that without", { timeout: 30_000 }, () => {
  test.each([
    ["few long radials", { count: 4, length_m: 8 }],
    ["many short ones", { count: 16, length_m: 4 }],
    ["raised", { count: 4, length_m: 8, height_m: 1.5 }],
    ["in soil", { count: 4, length_m: 8, height_m: -0.05 }],
  ] as const)("%s", (_, radials) => {
    const { problem } = okValue(wiresFromPlan({ ...withRadials(demoPlan, radials), soilModel: "full-wave" }));
    const { frequency_Hz, wires, ports } = problem;
    const graph = joinWires(wires, false);
    const { segments } = segmentWires(wires, ports, graph, frequency_Hz, C0_mPerS / frequency_Hz, soilAround(problem));
    const basis = buildBasis(segments);
    const { kernel, panels } = surroundings(problem, 40);
    let calls = 0;
    const counted: typeof kernel = (...args) => {
      calls++;
      kernel(...args);
    };
    const plain = fillMatrix(segments, basis, frequency_Hz, counted, { store: new Map() });
    const all = calls;
    calls = 0;
    const Z = fillMatrix(segments, basis, frequency_Hz, counted, { store: new Map(), panels });
    expect(calls).toBeLessThan(0.5 * all);
    // Against what each function has with itself.
    const N = basis.count;
    const own = (i: number) => Math.hypot(plain[2 * (i * N + i)]!, plain[2 * (i * N + i) + 1]!);
    let worst = 0;
    for (let i = 0; i < N; i++)
      for (let j = 0; j < N; j++)
        for (const at of [2 * (i * N + j), 2 * (i * N + j) + 1])
          worst = Math.max(worst, Math.abs(Z[at]! - plain[at]!) / Math.sqrt(own(i) * own(j)));
    expect(worst).toBeLessThan(1e-6);
    expect(worst).toBeGreaterThan(0);
  });
});
