import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Ground, type PortInput, portImpedances, solveWires, type WireInput } from "../../../engine/index.ts";
import { checkWires } from "../../../engine/wires/checkWires.ts";

type Loose = Record<string, unknown>;
const WIRE: WireInput = { id: "mast", from_m: [0, 0, 0], to_m: [0, 0, 10], radius_m: 0.01 };
const PORT: PortInput = {
  id: "feed",
  wire: "mast",
  position: 0,
  termination: { kind: "voltage", volts: { re: 1, im: 0 } },
};
const PROBLEM = { frequency_Hz: 7e6, ground: { kind: "perfect" } as Ground, wires: [WIRE], ports: [PORT] };

const check = (candidate: unknown) => checkWires(candidate as Parameters<typeof checkWires>[0]);
const codes = (candidate: unknown) => check(candidate).map((p) => p.code);
const withWire = (change: Loose, ground: Loose = { kind: "free-space" }) => ({
  ...PROBLEM,
  ground,
  wires: [{ ...WIRE, ...change }],
  ports: [{ ...PORT, position: 0.5 }],
});
const withPort = (change: Loose) => ({ ...PROBLEM, ports: [{ ...PORT, ...change }] });
const load = (re: number, im = 0) => ({ kind: "load", impedance_ohm: { re, im } });
const wire = (id: string, from_m: readonly number[], to_m: readonly number[], radius_m = 0.01) => ({
  id,
  from_m,
  to_m,
  radius_m,
});
const free = (wires: readonly Loose[], ports: readonly Loose[]) => ({
  frequency_Hz: 7e6,
  ground: { kind: "free-space" },
  wires,
  ports,
});
const soil = (relativePermittivity: number, conductivity_SPerM: number) => ({
  ...PROBLEM,
  ground: { kind: "soil", relativePermittivity, conductivity_SPerM },
});
const screen = (change: Loose) => ({
  ...soil(13, 0.005),
  screens: [{ x_m: 0, y_m: 0, count: 16, length_m: 5, radius_m: 1e-3, ...change }],
});

test("a sound problem has no problems", () => {
  expect(check(PROBLEM)).toEqual([]);
});

/** Each code at its limit: what is still taken, and what is not. */
const limits: [code: string, where: string, taken: unknown[], refused: unknown[]][] = [
  [
    "frequency-range",
    "frequency_Hz",
    [
      { ...PROBLEM, frequency_Hz: 1e3 },
      { ...PROBLEM, frequency_Hz: 1e10, wires: [{ ...WIRE, to_m: [0, 0, 0.1], radius_m: 1e-4 }] },
    ],
    [999.999, 1.0001e10, 0, -7e6, Number.NaN, Number.POSITIVE_INFINITY].map((frequency_Hz) => ({
      ...PROBLEM,
      frequency_Hz,
    })),
  ],
  [
    "ground-kind",
    "ground.kind",
    [{ ...PROBLEM, ground: { kind: "perfect" } }],
    [{}, { kind: "sea" }, { kind: 3 }, { kind: null }].map((ground) => ({ ...PROBLEM, ground })),
  ],
  [
    "permittivity-range",
    "ground.relativePermittivity",
    [soil(1, 0.01), soil(1000, 0.01)],
    [0.999, 1000.1, -13, Number.NaN].map((e) => soil(e, 0.01)),
  ],
  [
    "conductivity-range",
    "ground.conductivity_SPerM",
    [soil(13, 0), soil(13, 5)],
    [-1e-9, Number.NaN, Number.POSITIVE_INFINITY].map((s) => soil(13, s)),
  ],
  ["soil-model", "soilModel", [{ ...PROBLEM, soilModel: "screen" }], [{ ...PROBLEM, soilModel: "magic" }]],
  ["screen-place", "screens[0]", [screen({ x_m: -3 })], [screen({ x_m: Number.NaN })]],
  [
    "screen-count",
    "screens[0].count",
    [screen({ count: 0 }), screen({ count: 1000 })],
    [-1, 1001, 2.5, Number.NaN].map((count) => screen({ count })),
  ],
  [
    "screen-length",
    "screens[0].length_m",
    [screen({ length_m: 0.01 })],
    [0, -5, Number.NaN].map((length_m) => screen({ length_m, radius_m: -1 })),
  ],
  [
    "screen-radius",
    "screens[0].radius_m",
    [screen({ radius_m: 4.99 })],
    [0, -1, 5, Number.NaN].map((radius_m) => screen({ radius_m })),
  ],
  ["no-wires", "wires", [PROBLEM], [{ ...PROBLEM, wires: [] }]],
  [
    "too-many-wires",
    "wires",
    [],
    [{ ...PROBLEM, wires: Array.from({ length: 2001 }, (_, i) => wire(`w${i}`, [i, 0, 0], [i, 0, 10])) }],
  ],
  ["no-ports", "ports", [PROBLEM], [{ ...PROBLEM, ports: [] }]],
  [
    "too-many-ports",
    "ports",
    [
      free(
        [WIRE as unknown as Loose],
        Array.from({ length: 64 }, (_, i) => ({ ...PORT, id: `p${i}`, position: (i + 1) / 66 })),
      ),
    ],
    [
      free(
        [WIRE as unknown as Loose],
        Array.from({ length: 65 }, (_, i) => ({ ...PORT, id: `p${i}`, position: (i + 1) / 66 })),
      ),
    ],
  ],
  [
    "wire-id-twice",
    "wires[1].id",
    [{ ...PROBLEM, wires: [WIRE, wire("other", [5, 0, 0], [5, 0, 10])] }],
    [{ ...PROBLEM, wires: [WIRE, wire("mast", [5, 0, 0], [5, 0, 10])] }],
  ],
  [
    "wire-ends",
    "wires[0]",
    [withWire({ to_m: [0, 0, 9] })],
    [withWire({ to_m: [0, Number.NaN, 9] }), withWire({ from_m: [Number.NEGATIVE_INFINITY, 0, 0] })],
  ],
  [
    "wire-length",
    "wires[0]",
    [withWire({ to_m: [0, 0, 1.1e-6], radius_m: 1e-7 })],
    [
      withWire({ to_m: [0, 0, 1e-6], radius_m: 1e-7 }),
      withWire({ to_m: [0, 0, 0] }),
      withWire({ from_m: [0, 0, -1.7e308], to_m: [0, 0, 1.7e308] }),
    ],
  ],
  [
    "wire-radius",
    "wires[0].radius_m",
    [withWire({ radius_m: 1e-6 })],
    [0, -0.01, Number.NaN, Number.POSITIVE_INFINITY].map((radius_m) => withWire({ radius_m })),
  ],
  ["wire-thick", "wires[0].radius_m", [withWire({ radius_m: 4.99 })], [withWire({ radius_m: 5 })]],
  ["wire-thin", "wires[0].radius_m", [withWire({ radius_m: 1e-8 })], [withWire({ radius_m: 0.99e-8 })]],
  [
    "wire-below-ground",
    "wires[0]",
    [withWire({ from_m: [0, 0, -0.9e-6] }, { kind: "perfect" }), withWire({ from_m: [0, 0, -3] })],
    [withWire({ from_m: [0, 0, -1.1e-6] }, { kind: "perfect" }), withWire({ from_m: [0, 0, -3] }, { kind: "perfect" })],
  ],
  [
    "wire-on-ground",
    "wires[0]",
    [withWire({ from_m: [0, 0, 0.01], to_m: [5, 0, 0.011] }, { kind: "perfect" }), withWire({ to_m: [5, 0, 0] })],
    [
      withWire({ to_m: [5, 0, 0] }, { kind: "perfect" }),
      withWire({ from_m: [0, 0, 0.01], to_m: [5, 0, 0.01] }, { kind: "perfect" }),
      withWire({ from_m: [0, 0, 0.0099], to_m: [0, 0, 10] }, { kind: "perfect" }),
    ],
  ],
  [
    "wire-conductivity",
    "wires[0].conductivity_SPerM",
    [withWire({ conductivity_SPerM: 1 })],
    [0, -5.8e7, Number.NaN].map((conductivity_SPerM) => withWire({ conductivity_SPerM })),
  ],
  [
    "wire-segments",
    "wires[0].segments",
    [withWire({ segments: 1 })],
    [0, -3, 2.5, 4001, Number.NaN].map((segments) => withWire({ segments })),
  ],
  [
    "too-many-segments",
    "wires",
    [withWire({ segments: 3999 }), withWire({ to_m: [0, 0, 4000] })],
    [
      withWire({ segments: 4000 }),
      // The engine's own choice: 40 per wavelength of 43 m.
      withWire({ to_m: [0, 0, 4500] }),
      { ...withWire({ to_m: [0, 0, 1e6] }), frequency_Hz: 1e10 },
    ],
  ],
  [
    "wires-spread",
    "wires",
    [{ ...PROBLEM, wires: [WIRE, wire("far", [42_700, 0, 0], [42_700, 0, 10])] }],
    [
      { ...PROBLEM, wires: [WIRE, wire("far", [42_900, 0, 0], [42_900, 0, 10])] },
      { ...PROBLEM, wires: [WIRE, wire("far", [1e200, 0, 0], [1e200, 0, 10])] },
    ],
  ],
  [
    "port-id-twice",
    "ports[1].id",
    [{ ...PROBLEM, ports: [PORT, { ...PORT, id: "b", position: 0.5 }] }],
    [{ ...PROBLEM, ports: [PORT, { ...PORT, position: 0.5 }] }],
  ],
  ["port-wire", "ports[0].wire", [PROBLEM], [withPort({ wire: "" }), withPort({ wire: "Mast" })]],
  [
    "port-position",
    "ports[0].position",
    [withPort({ position: 0 }), withPort({ position: 0.999 })],
    [-1e-9, 1.000001, Number.NaN].map((position) => withPort({ position })),
  ],
  [
    "port-place-twice",
    "ports[1]",
    [{ ...PROBLEM, ports: [PORT, { ...PORT, id: "b", position: 1e-3 }] }],
    [
      { ...PROBLEM, ports: [PORT, { ...PORT, id: "b" }] },
      // Either side of a joint of two wires is one gap.
      free(
        [wire("low", [0, 0, 0], [0, 0, 5]), wire("high", [0, 0, 5], [0, 0, 10])],
        [
          { ...PORT, wire: "low", position: 1 },
          { ...PORT, id: "b", wire: "high", position: 0, termination: load(50) },
        ],
      ),
    ],
  ],
  [
    "port-termination",
    "ports[0].termination.kind",
    [PROBLEM],
    [{ kind: "antenna" }, {}, { kind: 5 }].map((termination) => withPort({ termination })),
  ],
  [
    "port-value",
    "ports[0].termination",
    [
      withPort({ termination: { kind: "voltage", volts: { re: 1e9, im: -1e9 } } }),
      { ...PROBLEM, ports: [PORT, { ...PORT, id: "b", position: 0.5, termination: load(1e12, -1e12) }] },
    ],
    [
      withPort({ termination: { kind: "voltage", volts: { re: 1.1e9, im: 0 } } }),
      withPort({ termination: { kind: "voltage", volts: { re: 0, im: Number.NaN } } }),
      withPort({ termination: { kind: "current", amperes: { re: Number.POSITIVE_INFINITY, im: 0 } } }),
      {
        ...PROBLEM,
        ports: [
          { ...PORT, termination: load(1.1e12) },
          { ...PORT, id: "b", position: 0.5 },
        ],
      },
    ],
  ],
  [
    "nothing-fed",
    "ports",
    [PROBLEM],
    [{ kind: "short" }, { kind: "open" }, load(50)].map((termination) => withPort({ termination })),
  ],
  [
    "port-free-end",
    "ports[0].position",
    [withPort({ position: 0 }), free([WIRE as unknown as Loose], [{ ...PORT, position: 1e-3 }])],
    [withPort({ position: 1 }), free([WIRE as unknown as Loose], [PORT as unknown as Loose])],
  ],
  [
    "wires-touch",
    "wires[1]",
    [
      { ...PROBLEM, wires: [WIRE, wire("b", [0.0201, 0, 0], [0.0201, 0, 10])] },
      { ...PROBLEM, wires: [WIRE, wire("b", [0.0201, 0, 12], [0.0201, 5, 3])] },
    ],
    [
      // Side by side, crossing, and ending on the side of the other.
      { ...PROBLEM, wires: [WIRE, wire("b", [0.0199, 0, 0], [0.0199, 0, 10])] },
      { ...PROBLEM, wires: [WIRE, wire("b", [-3, 0.0199, 4], [3, 0.0199, 6])] },
      { ...PROBLEM, wires: [WIRE, wire("b", [0, 0, 5], [4, 0, 5])] },
      // In one line, end to end but 2 µm short of a joint.
      { ...PROBLEM, wires: [WIRE, wire("b", [0, 0, 10.000_002], [0, 0, 20])] },
    ],
  ],
  [
    "wires-overlap",
    "wires[1]",
    [{ ...PROBLEM, wires: [WIRE, wire("b", [0, 0, 0], [1e-3, 0, 10])] }],
    [
      { ...PROBLEM, wires: [WIRE, wire("b", [0, 0, 0], [0, 0, 10])] },
      { ...PROBLEM, wires: [WIRE, wire("b", [0, 0, 10], [0, 0, 0])] },
      { ...PROBLEM, wires: [WIRE, wire("b", [0, 0, 0], [0, 0, 4])] },
    ],
  ],
];

describe("each problem at its limit", () => {
  test.each(limits)("%s", (code, where, taken, refused) => {
    for (const candidate of taken) expect(codes(candidate)).toEqual([]);
    expect(refused.length).toBeGreaterThan(0);
    for (const candidate of refused) {
      const found = check(candidate).filter((p) => p.code === code);
      expect(found.map((p) => p.where)).toContain(where);
      for (const p of found) expect(p.message).not.toMatch(/undefined|\[object/);
    }
  });

  test("wires that touch or overlap are both named", () => {
    const touching = { ...PROBLEM, wires: [WIRE, wire("rope", [-3, 0, 4], [3, 0, 6])] };
    const lying = { ...PROBLEM, wires: [WIRE, wire("rope", [0, 0, 0], [0, 0, 4])] };
    for (const candidate of [touching, lying]) {
      const [problem] = check(candidate);
      expect(problem!.message).toContain('"mast"');
      expect(problem!.message).toContain('"rope"');
    }
  });

  test("a junction whose every gap forces a current is cut off; one that may settle is not", () => {
    const star = [0, 1, 2].map((i) => wire(`w${i}`, [0, 0, 0], [Math.cos(2 * i), Math.sin(2 * i), 0], 1e-3));
    const around = (...kinds: Loose[]) =>
      free(
        star,
        kinds.map((termination, i) => ({ id: `p${i}`, wire: `w${i}`, position: 0, termination })),
      );
    const forced = { kind: "current", amperes: { re: 1, im: 0 } };
    expect(codes(around(forced, { kind: "open" }, forced))).toEqual(["junction-cut-off"]);
    expect(codes(around(forced, { kind: "open" }, { kind: "short" }))).toEqual([]);
    expect(codes(around(forced, { kind: "open" }))).toEqual([]);
    // Open-circuit impedances of all three gaps do not exist, whatever is connected.
    const z = portImpedances(around(forced, { kind: "short" }, { kind: "short" }) as never);
    expect(z.ok ? [] : z.problems.map((p) => p.code)).toEqual(["ports-dependent"]);
  });

  test("all at once", () => {
    const found = codes({
      frequency_Hz: 0,
      ground: { kind: "soil", relativePermittivity: 0, conductivity_SPerM: -1 },
      wires: [wire("a", [0, 0, -1], [0, 0, 3]), wire("a", [0, 0, 0], [0, 0, 0])],
      ports: [{ ...PORT, position: 2, termination: { kind: "open" } }],
    });
    expect(found).toEqual(
      expect.arrayContaining([
        ...["frequency-range", "permittivity-range", "conductivity-range", "wire-below-ground", "wire-id-twice"],
        ...["wire-length", "port-wire", "port-position", "nothing-fed"],
      ]),
    );
  });

  test("data of another shape is told where, not thrown at", () => {
    for (const other of [null, undefined, 5, "plan", [], {}, { wires: 3 }])
      expect(check(other).every((p) => ["wrong-type", "ground-kind"].includes(p.code))).toBe(true);
    expect(check({ ...PROBLEM, wires: [null, { ...WIRE, from_m: 3 }] }).map((p) => p.where)).toEqual([
      "wires[0]",
      "wires[1].from_m",
    ]);
    expect(check({ ...PROBLEM, frequency_Hz: "7e6" })).toEqual([
      { code: "wrong-type", where: "frequency_Hz", message: "Expected a number at frequency_Hz, not string." },
    ]);
  });
});

describe("anything may be handed in", () => {
  const settings = { seed: 20_260, numRuns: 400 } as const;
  const odd = fc.oneof(
    fc.constantFrom(null, undefined, "", "mast", "voltage", "short", true, [], {}, 0, -0, 0.5, 1, -1, 1e300, 5e-324),
    fc.double(),
    fc.jsonValue({ maxDepth: 2 }),
  );
  /** Every path into a value. */
  function paths(value: unknown, at: (string | number)[] = []): (string | number)[][] {
    if (typeof value !== "object" || value === null) return [at];
    return [at, ...Object.entries(value).flatMap(([key, v]) => paths(v, [...at, key]))];
  }
  const replaced = (value: unknown, path: readonly (string | number)[], by: unknown): unknown => {
    const [first, ...rest] = path;
    if (first === undefined) return by;
    const copy = (Array.isArray(value) ? [...value] : { ...(value as Loose) }) as Loose;
    copy[first] = replaced(copy[first], rest, by);
    return copy;
  };
  const sound = {
    ...soil(13, 0.005),
    soilModel: "screen",
    screens: [{ x_m: 0, y_m: 0, count: 16, length_m: 5, radius_m: 1e-3 }],
    wires: [
      { ...WIRE, segments: 4, conductivity_SPerM: 5.8e7 },
      { ...wire("b", [4, 0, 0], [4, 0, 9]), segments: 3 },
      { ...wire("c", [4, 0, 9], [7, 0, 9]), segments: 3 },
    ],
    ports: [
      PORT,
      { ...PORT, id: "l", wire: "b", termination: load(3, 4) },
      { ...PORT, id: "c", wire: "c", position: 0, termination: { kind: "current", amperes: { re: 1, im: 0 } } },
    ],
  };
  const where = paths(sound);

  test("there is something to damage", () => {
    expect(codes(sound)).toEqual([]);
    expect(where.length).toBeGreaterThan(60);
  });

  test("one or two fields of a sound problem replaced by anything: an answer or problems, nothing thrown", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...where), odd), { minLength: 1, maxLength: 2 }), (changes) => {
        let candidate: unknown = sound;
        for (const [path, by] of changes) {
          try {
            candidate = replaced(candidate, path, by);
          } catch {
            // The second path may lead through what the first has taken away.
          }
        }
        const problems = check(candidate);
        expect(problems.every((p) => p.code && typeof p.where === "string" && p.message)).toBe(true);
        // Solving is for what passes and stays small; soil with screens has its own tests.
        const c = candidate as typeof sound;
        if (problems.length > 0) return;
        const answer = solveWires({ ...c, ground: { kind: "perfect" }, screens: [] } as never);
        if (answer.ok) expect(Number.isFinite(answer.value.inputPower_W)).toBe(true);
        else expect(answer.problems.length).toBeGreaterThan(0);
      }),
      settings,
    );
  });

  test("any JSON at all", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (candidate) => {
        expect(check(candidate).length).toBeGreaterThan(0);
        expect(solveWires(candidate as never).ok).toBe(false);
        expect(portImpedances(candidate as never).ok).toBe(false);
      }),
      settings,
    );
  });
});
