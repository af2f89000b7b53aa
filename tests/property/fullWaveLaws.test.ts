import { describe, expect, test, vi } from "vitest";
import { buildBasis } from "../../engine/basis/buildBasis.ts";
import { C0_mPerS } from "../../engine/constants.ts";
import { type Complex, type Ground, type PortInput, solveWires, type WireInput } from "../../engine/index.ts";
import { PAIR_SIZE } from "../../engine/kernel/PairKernel.ts";
import { surroundings } from "../../engine/kernel/surroundings.ts";
import { fillMatrix } from "../../engine/matrix/fillMatrix.ts";
import { joinWires } from "../../engine/wires/joinWires.ts";
import { segmentWires } from "../../engine/wires/segmentWires.ts";
import { okValue } from "../support/okValue.ts";
import { radialVertical } from "../support/radialVertical.ts";
import { ONE_VOLT, SHORT } from "../support/uprights.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 60_000 });

const FREQUENCY_HZ = 7.1e6;
const WAVELENGTH_m = C0_mPerS / FREQUENCY_HZ;
const soil = (relativePermittivity: number, conductivity_SPerM: number): Ground => ({
  kind: "soil",
  relativePermittivity,
  conductivity_SPerM,
});
const average = soil(13, 0.005);

const problem = (ground: Ground, wires: readonly WireInput[], ports: readonly PortInput[]) =>
  ({ frequency_Hz: FREQUENCY_HZ, soilModel: "full-wave", ground, wires, ports }) as const;
const impedance = (ground: Ground, wires: readonly WireInput[], ports: readonly PortInput[]): Complex =>
  okValue(solveWires(problem(ground, wires, ports))).ports[0]!.impedance_ohm;
const apart = (a: Complex, b: Complex) => Math.hypot(a.re - b.re, a.im - b.im);

/** A quarter-wave vertical on four short radials. */
const standing = (hub_m: number, segments = 12) =>
  radialVertical({
    hub_m,
    upright_m: 10.5,
    radials: 4,
    radial_m: 5.2,
    uprightSegments: segments,
    radialSegments: segments,
  });

/** Nothing level, nothing upright, nothing alike: two bent wires, and a radial just above the soil. */
const skew: WireInput[] = [
  { id: "a", from_m: [0, 0, 0.3], to_m: [3, 1, 6], radius_m: 1e-3, segments: 6 },
  { id: "b", from_m: [3, 1, 6], to_m: [4, -4, 9], radius_m: 2e-3, segments: 5 },
  { id: "c", from_m: [0, 0, 0.3], to_m: [-5, 2, 0.05], radius_m: 1e-3, segments: 7 },
  { id: "d", from_m: [7, 3, 1], to_m: [9, -2, 4], radius_m: 1e-3, segments: 6 },
];
const skewPorts: PortInput[] = [
  { id: "a", wire: "a", position: 0, termination: ONE_VOLT },
  { id: "d", wire: "d", position: 0.5, termination: SHORT },
];

const meshed = (wires: readonly WireInput[], ports: readonly PortInput[]) =>
  segmentWires(wires, ports, joinWires(wires, false), FREQUENCY_HZ, WAVELENGTH_m).segments;

/*
 * The matrix is filled by halves and so symmetric whatever the kernel does. What has to be seen is that the kernel of
 * source and observer changed round is the transpose, though the two G_zx are read and integrated at other places.
 * Seen here: 2.2e-9 of the largest moment of the pair.
 */
test("reciprocity: moments of a pair of segments, source and observer changed round", () => {
  const segments = meshed(skew, skewPorts);
  const { kernel } = surroundings(problem(average, skew, skewPorts), WAVELENGTH_m);
  const there = new Float64Array(PAIR_SIZE);
  const back = new Float64Array(PAIR_SIZE);
  let worst = 0;
  for (let s = 0; s < segments.count; s++)
    for (let t = 0; t < s; t++) {
      kernel(there, 0, segments, s, t);
      kernel(back, 0, segments, t, s);
      // V and W as 1, u, u', uu': u and u' change places.
      const swapped = [0, 2, 1, 3, 4, 6, 5, 7, 8, 9].map((i) => back[i]!);
      for (const part of [
        [0, 1, 2, 3, 4, 5, 6, 7],
        [8, 9],
      ]) {
        const size = Math.max(...part.map((i) => Math.abs(there[i]!)));
        for (const i of part) worst = Math.max(worst, Math.abs(there[i]! - swapped[i]!) / size);
      }
    }
  expect(worst).toBeLessThan(1e-6);
});

test("better and better soil tends to the images of a perfect ground, as one over the root of its conductivity", () => {
  const { wires, port } = standing(1);
  const mirror = impedance({ kind: "perfect" }, wires, [port]);
  const [one, ten, hundred] = [1, 10, 100].map((s) => apart(impedance(soil(13, s), wires, [port]), mirror));
  expect(hundred!).toBeLessThan(0.2);
  for (const step of [one! / ten!, ten! / hundred!]) {
    expect(step).toBeGreaterThan(0.9 * Math.sqrt(10));
    expect(step).toBeLessThan(1.1 * Math.sqrt(10));
  }
});

test("soil like air is air", () => {
  const { wires, port } = standing(0.02);
  const alone = impedance({ kind: "free-space" }, wires, [port]);
  const [far, near] = [1.01, 1.001].map((e) => apart(impedance(soil(e, 0), wires, [port]), alone));
  expect(far! / near!).toBeGreaterThan(9);
  expect(far! / near!).toBeLessThan(11);
  expect(apart(impedance(soil(1, 0), wires, [port]), alone)).toBeLessThan(1e-6);
});

test("blocks that are kept give the matrix that none give, and give it again", () => {
  const { wires, port } = standing(0.05, 6);
  const all = [...wires, ...skew.slice(3)];
  const segments = meshed(all, [port]);
  const basis = buildBasis(segments);
  const { kernel } = surroundings(problem(average, all, [port]), WAVELENGTH_m);
  const none = fillMatrix(segments, basis, FREQUENCY_HZ, kernel);
  const store = new Map<string, Float64Array>();
  const first = fillMatrix(segments, basis, FREQUENCY_HZ, kernel, { store });
  const kept = store.size;
  const again = fillMatrix(segments, basis, FREQUENCY_HZ, kernel, { store });
  // Upright and four radials: 1 + 1 + 3 blocks of 15; the wire apart: 1 + 5.
  expect(kept).toBe(11);
  expect(store.size).toBe(kept);
  expect(again).toEqual(first);
  const size = none.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
  none.forEach((v, i) => {
    expect(Math.abs(v - first[i]!)).toBeLessThan(1e-12 * size);
  });
});

describe("soil is the same everywhere and in every direction", () => {
  /** Nothing kept, or what is found again for its geometry would be compared with itself. */
  const matrix = (wires: readonly WireInput[]) => {
    const segments = meshed(wires, skewPorts);
    const { kernel } = surroundings(problem(average, wires, skewPorts), WAVELENGTH_m);
    return fillMatrix(segments, buildBasis(segments), FREQUENCY_HZ, kernel);
  };
  const here = matrix(skew);
  const size = here.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
  const z = impedance(average, skew, skewPorts);
  const turn = 0.7;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  test.each<[string, (p: readonly [number, number, number]) => readonly [number, number, number]]>([
    ["moved", ([x, y, z]) => [x + 31.7, y - 12.9, z]],
    ["turned", ([x, y, z]) => [x * c - y * s, x * s + y * c, z]],
    ["mirrored", ([x, y, z]) => [x, -y, z]],
  ])("%s: matrix and impedance stay", (_, map) => {
    const wires = skew.map((w) => ({ ...w, from_m: map(w.from_m), to_m: map(w.to_m) }));
    const there = matrix(wires);
    const worst = here.reduce((m, v, i) => Math.max(m, Math.abs(v - there[i]!)), 0);
    expect(worst).toBeLessThan(1e-11 * size);
    expect(apart(impedance(average, wires, skewPorts), z)).toBeLessThan(1e-9 * Math.hypot(z.re, z.im));
  });
});

test.each([0.01, 0.5])("finer and finer wires settle, radials at %d m", (hub) => {
  const [z10, z20, z40] = [10, 20, 40].map((n) => {
    const { wires, port } = standing(hub, n);
    return impedance(average, wires, [port]);
  });
  const [coarse, fine] = [apart(z10!, z20!), apart(z20!, z40!)];
  expect(fine).toBeLessThan(0.5 * coarse);
  expect(fine).toBeLessThan(0.3);
});
