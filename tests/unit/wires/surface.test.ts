import { describe, expect, test } from "vitest";
import { C0_mPerS } from "../../../engine/constants.ts";
import { type PortInput, solveWires, type WireInput } from "../../../engine/index.ts";
import { halfSpaceOf } from "../../../engine/kernel/halfSpace/HalfSpace.ts";
import { checkSurface, unsupportedEnds } from "../../../engine/wires/checkSurface.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import { FEWEST_IN_SOIL, PER_SOIL_WAVELENGTH, segmentCounts } from "../../../engine/wires/segmentCounts.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { ONE_VOLT, SHORT } from "../../support/uprights.ts";

type Point = WireInput["from_m"];
const wire = (id: string, from_m: Point, to_m: Point, more: Partial<WireInput> = {}): WireInput => ({
  id,
  from_m,
  to_m,
  radius_m: 1e-3,
  ...more,
});
const level = (z: number, radius_m = 1e-3) => wire("w", [0, 0, z], [5, 0, z], { radius_m });

const average = halfSpaceOf(7.1e6, 13, 0.005);

describe("checkSurface: both sides of every limit", () => {
  const code = (w: WireInput) => checkSurface(w, average)?.code;
  test.each<[string, WireInput, WireInput, string]>([
    ["3 mm above", level(0.003), level(0.00299), "wire-near-soil"],
    ["3 mm below", level(-0.003), level(-0.00299), "wire-near-soil"],
    ["in the surface", level(-0.003), level(0), "wire-near-soil"],
    ["2 m deep", level(-2), level(-2.001), "wire-too-deep"],
    ["its radius above", level(0.02, 0.02), level(0.0199, 0.02), "wire-on-ground"],
    ["its radius below", level(-0.02, 0.02), level(-0.0199, 0.02), "wire-on-ground"],
    ["an end above", wire("w", [0, 0, 0.003], [0, 0, 1]), wire("w", [0, 0, 0.002], [0, 0, 1]), "wire-near-soil"],
    ["an end below", wire("w", [0, 0, -0.003], [0, 0, -1]), wire("w", [0, 0, -0.002], [0, 0, -1]), "wire-near-soil"],
    [
      "an end just through",
      wire("w", [0, 0, -0.003], [0, 0, 1]),
      wire("w", [0, 0, -0.0029], [0, 0, 1]),
      "wire-near-soil",
    ],
    ["an end in it", wire("w", [0, 0, 1e-6], [0, 0, 1]), wire("w", [0, 0, 2e-6], [0, 0, 1]), "wire-near-soil"],
    [
      "passing through, a tenth of its length",
      wire("w", [0, 0, -0.051], [1, 0, 0.05]),
      wire("w", [0, 0, -0.05], [1, 0, 0.05]),
      "wire-along-surface",
    ],
    [
      "from the surface, a tenth of its length",
      wire("w", [0, 0, 0], [1, 0, 0.101]),
      wire("w", [0, 0, 0], [1, 0, 0.1]),
      "wire-along-surface",
    ],
    // A slope hangs by less than its radius.
    [
      "a tube that slopes at 45 degrees",
      wire("w", [0, 0, 0.0142], [1, 0, 1.0142], { radius_m: 0.02 }),
      wire("w", [0, 0, 0.0141], [1, 0, 1.0141], { radius_m: 0.02 }),
      "wire-on-ground",
    ],
  ])("%s", (_, taken, refused, why) => {
    expect(code(taken)).toBeUndefined();
    expect(code(refused)).toBe(why);
    // The other way about it is the same wire.
    const turned = (w: WireInput) => ({ ...w, from_m: w.to_m, to_m: w.from_m });
    expect(code(turned(taken))).toBeUndefined();
    expect(code(turned(refused))).toBe(why);
  });

  test("deep in soil of little loss: both sides of the limit, for what is not level; soil that absorbs has none", () => {
    const stake = (z: number) => wire("stake", [0, 0, 0.01], [0, 0, -z]);
    const lake = halfSpaceOf(28e6, 80, 0.001);
    // |k1| is 5.25 per metre there: seven is reached at 1.33 m.
    expect(checkSurface(stake(1.33), lake)).toBeUndefined();
    const refused = checkSurface(stake(1.34), lake);
    expect(refused?.code).toBe("wire-too-deep");
    for (const word of ['"stake"', "z = -1.34 m", "-1.33 m"]) expect(refused?.message).toContain(word);
    expect(checkSurface(level(-1.9), lake)).toBeUndefined();
    expect(checkSurface(stake(2), halfSpaceOf(28e6, 81, 5))).toBeUndefined();
  });

  test("soil that is no soil is refused by itself; nothing is thrown over wires in it", () => {
    const ground = { kind: "soil", relativePermittivity: 0.5, conductivity_SPerM: 0.005 } as const;
    const ports = [{ id: "p", wire: "w", position: 0.5, termination: ONE_VOLT }];
    const r = solveWires({ frequency_Hz: 7.1e6, ground, soilModel: "full-wave", wires: [level(-0.05)], ports });
    expect(r.ok ? [] : r.problems.map((p) => p.code)).toEqual(["permittivity-range"]);
  });

  test.each<[WireInput, readonly string[]]>([
    [level(0.0021), ['"w"', "lies at z = 0.0021 m", "0.003 m"]],
    [level(0), ['"w"', "lies at z = 0 m", "0.003 m"]],
    [wire("w", [0, 0, -0.0012], [0, 0, 1]), ['"w"', "has an end at z = -0.0012 m", "0.003 m"]],
    [level(-2.5), ['"w"', "z = -2.5 m", "-2 m"]],
    [level(-0.0115, 0.012), ['"w"', "z = -0.0115 m", "0.012 m"]],
    [wire("w", [0, 0, 0.25], [9, 0, -0.25]), ['"w"', "rises 0.5 m", "a tenth"]],
  ])("the message says which wire, the figure and the limit: %#", (w, words) => {
    const message = checkSurface(w, average)?.message;
    for (const word of words) expect(message).toContain(word);
  });

  test("an end in the surface needs a wire in the soil", () => {
    const upright = wire("upright", [0, 0, 0], [0, 0, 5]);
    const lead = wire("lead", [0, 0, -0.05], [0, 0, 0]);
    const lost = (...wires: WireInput[]) => unsupportedEnds(wires, joinWires(wires, false));
    expect(lost(upright)).toEqual([0]);
    expect(lost(lead)).toEqual([]);
    expect(lost(upright, lead)).toEqual([]);
    // Another in air does not help, nor one in soil elsewhere.
    expect(lost(upright, wire("slope", [0, 0, 0], [3, 0, 3]))).toEqual([0, 1]);
    expect(lost(upright, wire("lead", [0.1, 0, -0.05], [0.1, 0, 0]))).toEqual([0]);
    const problem = {
      frequency_Hz: 7.1e6,
      soilModel: "full-wave",
      ground: { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 },
      wires: [upright],
      ports: [{ id: "feed", wire: "upright", position: 0.5, termination: ONE_VOLT }],
    } as const;
    const r = solveWires(problem);
    const [found] = r.ok ? [] : r.problems;
    expect(found?.code).toBe("wire-near-soil");
    expect(found?.where).toBe("wires[0]");
    for (const word of ['"upright"', "z = 0", "0.003 m"]) expect(found?.message).toContain(word);
  });
});

describe("cutting wires at the surface", () => {
  const F_HZ = 7.1e6;
  const WAVELENGTH_m = C0_mPerS / F_HZ;
  const soil = halfSpaceOf(F_HZ, 20, 0.3);
  const soilWavelength_m = (2 * Math.PI) / Math.hypot(soil.k1Re, soil.k1Im);
  const mesh = (wires: readonly WireInput[], ports: readonly PortInput[] = [], around: typeof soil | null = soil) =>
    segmentWires(wires, ports, joinWires(wires, false), F_HZ, WAVELENGTH_m, around ?? undefined);
  const port = (position: number, on = "w"): PortInput => ({
    id: `p${position}`,
    wire: on,
    position,
    termination: SHORT,
  });
  /** Heights of the ends of all segments, in order along the wire. */
  const heights = ({ segments: { count, start, tangent, length } }: ReturnType<typeof mesh>) =>
    Array.from(
      { length: count },
      (_, s) => [start[3 * s + 2]!, start[3 * s + 2]! + length[s]! * tangent[3 * s + 2]!] as const,
    );
  const crossings = (found: ReturnType<typeof mesh>) =>
    heights(found).filter(([a, b]) => Math.min(a, b) < -1e-9 && Math.max(a, b) > 1e-9).length;

  test("no segment lies on both sides, whatever the slope and wherever the ports", () => {
    for (const [from, to] of [
      [
        [0, 0, -0.05],
        [0, 0, 10],
      ],
      [
        [1, 2, 9],
        [-1, 0.3, -1.7],
      ],
      [
        [0, 0, -2],
        [0, 0, 0.003],
      ],
    ] as const)
      for (const ports of [[], [port(0.5)], [port(0.02), port(0.7)]]) {
        const found = mesh([wire("w", from, to, { segments: 9 })], ports);
        expect(crossings(found)).toBe(0);
        // One more node where it was cut, and all in a row.
        expect(found.segments.nodeCount).toBe(found.segments.count + 1);
      }
  });

  test("where no wire can be in soil, it is not cut there", () => {
    const through = wire("w", [0, 0, -0.05], [0, 0, 10], { segments: 9 });
    expect(crossings(mesh([through], [], null))).toBe(1);
    expect(mesh([through], [], null).segments.count).toBe(9);
  });

  test("a port at the surface is the cut; a port elsewhere is on its own node", () => {
    const crossing = wire("w", [0, 0, -0.05], [0, 0, 10], { segments: 20 });
    const surface = 0.05 / 10.05;
    const at = mesh([crossing], [port(surface)]);
    const without = mesh([crossing]);
    expect(at.segments.count).toBe(without.segments.count);
    // Its gap is at the start of the run above.
    const first = at.portEnd[0]! >> 1;
    expect(at.portEnd[0]! & 1).toBe(0);
    expect(Math.abs(at.segments.start[3 * first + 2]!)).toBeLessThan(1e-12);
    expect(first).toBe(FEWEST_IN_SOIL);
    const up = mesh([crossing], [port((2 + 0.05) / 10.05)]);
    expect(up.segments.start[3 * (up.portEnd[0]! >> 1) + 2]!).toBeCloseTo(2, 12);
    expect(crossings(up)).toBe(0);
    // In the soil, too.
    const down = mesh([crossing], [port(0.02 / 10.05)]);
    expect(down.segments.start[3 * (down.portEnd[0]! >> 1) + 2]!).toBeCloseTo(-0.03, 12);
  });

  test("a wire that only touches the surface is not cut", () => {
    for (const z of [0, 9e-7, -9e-7]) {
      const found = mesh([wire("w", [0, 0, z], [0, 0, 10], { segments: 7 })]);
      expect(found.segments.count).toBe(7);
    }
  });

  test("in soil at least 24 segments a wavelength of the soil's, and three however short", () => {
    const found = (w: WireInput, ports: readonly PortInput[] = []) => {
      const m = mesh([w], ports);
      const below = heights(m).flatMap(([a, b], s) => (a + b < 0 ? [m.segments.length[s]!] : []));
      return { n: below.length, mean_m: below.reduce((a, b) => a + b, 0) / below.length };
    };
    const deep = wire("w", [0, 0, -0.5], [20, 0, -0.5]);
    // 13 wavelengths of this soil, half a wavelength of air.
    expect(segmentCounts([deep], WAVELENGTH_m, soil)).toEqual([
      Math.ceil((20 * PER_SOIL_WAVELENGTH) / soilWavelength_m),
    ]);
    expect(segmentCounts([deep], WAVELENGTH_m)).toEqual([114]);
    for (const [w, ports] of [
      [deep, []],
      [deep, [port(0.3)]],
      [wire("w", [0, 0, -1.5], [9, 0, 9]), []],
      [wire("w", [0, 0, -1.5], [0, 0, -0.1]), [port(0.5)]],
      [wire("w", [0, 0, -0.05], [0, 0, 10]), []],
    ] as const) {
      const { n, mean_m } = found(w, ports);
      expect(n).toBeGreaterThanOrEqual(FEWEST_IN_SOIL);
      expect(mean_m).toBeLessThanOrEqual(soilWavelength_m / PER_SOIL_WAVELENGTH);
    }
    // Shorter than four radii they are not made: 9 mm of a wire of 1 mm has room for two.
    expect(found(wire("w", [0, 0, -0.009], [0, 0, 10])).n).toBe(2);
  });

  test("a count that is asked for is kept where the wire stays on one side", () => {
    const asked = wire("w", [0, 0, -0.5], [20, 0, -0.5], { segments: 8 });
    expect(mesh([asked]).segments.count).toBe(8);
    expect(mesh([asked], [port(0.25)]).segments.count).toBe(8);
    // One that passes through gets its share below, but no less than what soil asks for there.
    const through = mesh([wire("w", [0, 0, -0.05], [0, 0, 10], { segments: 20 })]);
    expect(through.segments.count).toBe(20 + FEWEST_IN_SOIL);
  });

  test("in air nothing changes", () => {
    const wires = [wire("w", [0, 0, 1], [9, 0, 3]), wire("v", [0, 0, 0.005], [9, 3, 0.005])];
    expect(mesh(wires, [port(0.4)])).toEqual(mesh(wires, [port(0.4)], null));
  });
});
