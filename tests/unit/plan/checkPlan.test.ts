import { describe, expect, test } from "vitest";
import { checkPlan, type ElementPlan, type Plan, withElement, withGround, withRadials } from "../../../engine/index.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";

/** Path and code of each problem, sorted: what a caller can rely on. */
function found(candidate: unknown): string[] {
  const result = checkPlan(candidate);
  return result.ok ? [] : result.problems.map(({ where, code }) => `${where}: ${code}`).sort();
}

function message(candidate: unknown): string {
  const result = checkPlan(candidate);
  return result.ok ? "" : result.problems.map((problem) => problem.message).join("\n");
}

const withReflectorPart = (part: Record<string, unknown>): Plan =>
  withElement(twoElements, "reflector", (element) => ({ ...element, ...part }) as ElementPlan);
const withRadialPart = (part: Record<string, unknown>): Plan =>
  withReflectorPart({ radials: { ...twoElements.elements[1]!.radials, ...part } });

describe("a good plan", () => {
  test("passes, and comes back equal", () => {
    expect(checkPlan(twoElements)).toEqual({ ok: true, value: twoElements });
  });
  test("keeps fields unknown here, in place, and drops nothing", () => {
    const extended = { ...twoElements, log: [{ date: "2031-05-01", r: 38.5 }], elements: twoElements.elements };
    const result = checkPlan(extended);
    expect(result.ok && JSON.stringify(result.value)).toBe(JSON.stringify(extended));
  });
  test("-0 becomes 0, as a file would make it", () => {
    const result = checkPlan({ ...twoElements, elements: [{ ...twoElements.elements[0], left_m: -0 }] });
    expect(result.ok && result.value.elements[0]!.left_m).toBe(0);
  });
  test("a field named __proto__ stays a field", () => {
    const odd = JSON.parse(JSON.stringify(twoElements).replace("{", '{"__proto__":{"title":7},'));
    const result = checkPlan(odd);
    expect(result.ok && JSON.stringify(result.value)).toBe(JSON.stringify(odd));
  });
  test("every ground, base and soil model of the contract passes", () => {
    expect(found(withGround(twoElements, { kind: "free-space" }))).toEqual([]);
    expect(found(withGround(twoElements, { kind: "perfect" }))).toEqual([]);
    expect(found(withGround(twoElements, twoElements.ground, "full-wave"))).toEqual([]);
    expect(found(withReflectorPart({ base: { kind: "open" } }))).toEqual([]);
    expect(found(withReflectorPart({ base: { kind: "loaded", resistance_ohm: 0, reactance_ohm: -27 } }))).toEqual([]);
    expect(found(withReflectorPart({ base: { kind: "fed", current: { magnitude: 0.9, phase_deg: -90 } } }))).toEqual(
      [],
    );
    expect(found(withRadialPart({ insulation: { diameter_mm: 2.8, relativePermittivity: 3 } }))).toEqual([]);
  });
  test("no radials: their length and thickness say nothing", () => {
    expect(found(withRadialPart({ count: 0, length_m: 0, diameter_mm: 0 }))).toEqual([]);
    expect(found(withRadialPart({ count: 1, length_m: 0, diameter_mm: 0 }))).toEqual([
      "elements[1].radials.diameter_mm: out-of-range",
      "elements[1].radials.length_m: out-of-range",
    ]);
  });
});

describe("not a plan this page reads", () => {
  test.each([undefined, null, 7, "text", [], {}, { format: "other-plan", version: 1 }])("%j", (candidate) => {
    expect(found(candidate)).toEqual([candidate === undefined ? ": not-plain-data" : "format: unknown-format"]);
  });
  test("a newer version is refused with both versions named", () => {
    const newer = { ...twoElements, version: 4 };
    expect(found(newer)).toEqual(["version: newer-version"]);
    expect(message(newer)).toMatch(/version 4.*version 1/);
  });
  test.each([undefined, "1", 0, 1.5, Number.NaN])("version %j is none", (version) => {
    expect(found({ ...twoElements, version })).toEqual(["version: unknown-version"]);
  });
});

describe("one field wrong: one problem, at its path", () => {
  const wl_m = 299.792458 / 7.05;
  const cases: [string, unknown, string][] = [
    ["title a number", { ...twoElements, title: 3 }, "title: wrong-type"],
    ["title too long", { ...twoElements, title: "x".repeat(201) }, "title: too-long"],
    ["frequency as text", { ...twoElements, frequency_MHz: "7.05" }, "frequency_MHz: wrong-type"],
    ["soil model unknown", { ...twoElements, soilModel: "exact" }, "soilModel: unknown-choice"],
    ["ground missing", { ...twoElements, ground: undefined }, "ground: missing"],
    ["ground kind", { ...twoElements, ground: { kind: "sand" } }, "ground.kind: unknown-choice"],
    ["elements missing", { ...twoElements, elements: undefined }, "elements: missing"],
    ["elements no list", { ...twoElements, elements: {} }, "elements: wrong-type"],
    ["height zero", withReflectorPart({ height_m: 0 }), "elements[1].height_m: out-of-range"],
    ["height negative", withReflectorPart({ height_m: -10 }), "elements[1].height_m: out-of-range"],
    ["height NaN", withReflectorPart({ height_m: Number.NaN }), "elements[1].height_m: not-finite"],
    ["height endless", withReflectorPart({ height_m: Infinity }), "elements[1].height_m: not-finite"],
    ["height over 4 wl", withReflectorPart({ height_m: 4.01 * wl_m }), "elements[1].height_m: out-of-range"],
    ["diameter zero", withReflectorPart({ diameter_mm: 0 }), "elements[1].diameter_mm: out-of-range"],
    [
      "too thick for its length",
      withReflectorPart({ height_m: 5, diameter_mm: 501 }),
      "elements[1].diameter_mm: too-thick",
    ],
    ["conductor", withReflectorPart({ conductor: "steel" }), "elements[1].conductor: unknown-choice"],
    ["id empty", withReflectorPart({ id: "" }), "elements[1].id: empty-id"],
    ["id twice", withReflectorPart({ id: "driven" }), "elements[1].id: duplicate-id"],
    ["id a number", withReflectorPart({ id: 2 }), "elements[1].id: wrong-type"],
    ["base kind", withReflectorPart({ base: { kind: "earthed" } }), "elements[1].base.kind: unknown-choice"],
    ["position far off", withReflectorPart({ left_m: 1001 }), "elements[1].left_m: out-of-range"],
    [
      "load negative",
      withReflectorPart({ base: { kind: "loaded", resistance_ohm: -1, reactance_ohm: 0 } }),
      "elements[1].base.resistance_ohm: out-of-range",
    ],
    [
      "current zero",
      withReflectorPart({ base: { kind: "fed", current: { magnitude: 0, phase_deg: 0 } } }),
      "elements[1].base.current.magnitude: out-of-range",
    ],
    [
      "phase endless",
      withReflectorPart({ base: { kind: "fed", current: { magnitude: 1, phase_deg: Infinity } } }),
      "elements[1].base.current.phase_deg: not-finite",
    ],
    ["half a radial", withRadialPart({ count: 3.5 }), "elements[1].radials.count: not-whole"],
    ["121 radials", withRadialPart({ count: 121 }), "elements[1].radials.count: out-of-range"],
    ["radials missing", withReflectorPart({ radials: undefined }), "elements[1].radials: missing"],
    ["radials over 1 wl", withRadialPart({ length_m: 1.01 * wl_m }), "elements[1].radials.length_m: out-of-range"],
    ["radials under 0.01 wl", withRadialPart({ length_m: 0.4 }), "elements[1].radials.length_m: out-of-range"],
    ["radials too deep", withRadialPart({ height_m: -0.31 }), "elements[1].radials.height_m: out-of-range"],
    ["radials raised, screen", withRadialPart({ height_m: 2 }), "elements[1].radials.height_m: raised-needs-full-wave"],
    [
      "insulation inside the wire",
      withRadialPart({ insulation: { diameter_mm: 1.6, relativePermittivity: 3 } }),
      "elements[1].radials.insulation.diameter_mm: insulation-too-thin",
    ],
    [
      "insulation lighter than air",
      withRadialPart({ insulation: { diameter_mm: 2.8, relativePermittivity: 0.9 } }),
      "elements[1].radials.insulation.relativePermittivity: out-of-range",
    ],
    ["on one spot", withReflectorPart({ forward_m: 0 }), "elements[1].forward_m: elements-overlap"],
    ["touching", withReflectorPart({ forward_m: 0.002 }), "elements[1].forward_m: elements-overlap"],
    ["unknown number lost in a file", { ...twoElements, extra: [1, Infinity] }, "extra[1]: not-finite"],
  ];
  test.each(cases)("%s", (_, candidate, problem) => {
    expect(found(candidate)).toEqual([problem]);
  });
  test("just apart passes", () => {
    expect(found(withReflectorPart({ forward_m: 0.0021 }))).toEqual([]);
  });
});

describe("both sides of each numeric limit", () => {
  const set = (frequency_MHz: number) => ({ ...twoElements, frequency_MHz });
  const soil = (relativePermittivity: number, conductivity_SPerM: number) =>
    withGround(twoElements, { kind: "soil", relativePermittivity, conductivity_SPerM });
  const one = withElement(twoElements, "driven", (element) => ({
    ...element,
    height_m: 4,
    radials: { ...element.radials, count: 0 },
  }));
  const lone = { ...one, elements: one.elements.slice(0, 1) };
  test("frequency 1 to 60 MHz", () => {
    expect(found({ ...lone, frequency_MHz: 1 })).toEqual([]);
    expect(found({ ...lone, frequency_MHz: 60 })).toEqual([]);
    expect(found(set(0.999))).toContain("frequency_MHz: out-of-range");
    expect(found(set(60.1))).toContain("frequency_MHz: out-of-range");
  });
  test("soil constants", () => {
    expect(found(soil(1, 0))).toEqual([]);
    expect(found(soil(100, 10))).toEqual([]);
    expect(found(soil(0.99, 10.1))).toEqual([
      "ground.conductivity_SPerM: out-of-range",
      "ground.relativePermittivity: out-of-range",
    ]);
    expect(found(soil(101, -0.001))).toHaveLength(2);
  });
  test("200 m is the most, whatever the wavelength", () => {
    expect(found({ ...lone, frequency_MHz: 1, elements: [{ ...lone.elements[0], height_m: 200 }] })).toEqual([]);
    expect(found({ ...lone, frequency_MHz: 1, elements: [{ ...lone.elements[0], height_m: 200.1 }] })).toHaveLength(1);
  });
  test("raised radials pass with the full-wave model, over perfect ground, and when there are none", () => {
    const raised = withRadials(twoElements, { height_m: 2 });
    expect(found(raised)).toHaveLength(2);
    expect(found({ ...raised, soilModel: "full-wave" })).toEqual([]);
    expect(found(withGround(raised, { kind: "perfect" }))).toEqual([]);
    expect(found(withRadials(raised, { count: 0 }))).toEqual([]);
  });
});

describe("everything at once", () => {
  test("all problems of a bad plan, each with its path", () => {
    const bad = {
      ...twoElements,
      title: null,
      frequency_MHz: 0,
      ground: { kind: "soil", relativePermittivity: -1 },
      elements: [
        { ...twoElements.elements[0], height_m: "10", base: { kind: "joined" } },
        { ...twoElements.elements[1], diameter_mm: -2, radials: { count: -1 } },
        7,
      ],
    };
    expect(found(bad)).toEqual([
      "elements: nothing-fed",
      "elements[0].height_m: wrong-type",
      "elements[1].diameter_mm: out-of-range",
      "elements[1].radials.count: out-of-range",
      "elements[1].radials.diameter_mm: missing",
      "elements[1].radials.height_m: missing",
      "elements[1].radials.length_m: missing",
      "elements[2]: wrong-type",
      "frequency_MHz: out-of-range",
      "ground.conductivity_SPerM: missing",
      "ground.relativePermittivity: out-of-range",
      "title: wrong-type",
    ]);
  });
  test("no element, and five", () => {
    expect(found({ ...twoElements, elements: [] })).toEqual(["elements: element-count"]);
    const five = [0, 1, 2, 3, 4].map((i) => ({ ...twoElements.elements[0], id: `e${i}`, forward_m: -9 * i }));
    expect(found({ ...twoElements, elements: five })).toEqual(["elements: element-count"]);
    expect(found({ ...twoElements, elements: five.slice(1) })).toEqual([]);
  });
  test("far too many, and all of them bad: those beyond the limit are one problem, their number", () => {
    expect(found({ ...twoElements, elements: Array.from({ length: 5000 }, () => 7) })).toEqual([
      "elements: element-count",
      "elements[0]: wrong-type",
      "elements[1]: wrong-type",
      "elements[2]: wrong-type",
      "elements[3]: wrong-type",
    ]);
  });
  test("a message names the field, the value and the limit", () => {
    expect(message({ ...twoElements, frequency_MHz: 0.5 })).toBe(
      "The frequency is 0.5 MHz; it must be at least 1 MHz and at most 60 MHz.",
    );
    expect(message(withReflectorPart({ height_m: 0.1 }))).toBe(
      "The height of element 2 is 0.1 m; it must be at least 0.425238 m and at most 170.095 m " +
        "(0.01 to 4 wavelengths, never over 200 m).",
    );
    expect(message({ ...twoElements, ground: { kind: "sand" } })).toBe(
      'The kind of ground is "sand"; it must be one of "free-space", "perfect", "soil".',
    );
  });
});

describe("things no plan is made of", () => {
  const hollow: unknown[] = [];
  hollow.length = 2 ** 31;
  const thrower = new Proxy(
    {},
    {
      get: () => {
        throw new Error("no");
      },
      getPrototypeOf: () => {
        throw new Error("no");
      },
      ownKeys: () => {
        throw new Error("no");
      },
    },
  );
  const square = Array.from({ length: 500 }, () => Array.from({ length: 500 }, () => null));
  const circle: Record<string, unknown> = { ...twoElements };
  circle.self = circle;
  const bushyCircle: Record<string, unknown> = { ...twoElements };
  for (const key of ["a", "b", "c", "d"]) bushyCircle[key] = bushyCircle;
  const revoked = Proxy.revocable({}, {});
  revoked.revoke();
  test.each([
    ["a proxy that throws", thrower, ["unreadable"]],
    ["a plan with one inside", { ...twoElements, elements: thrower }, ["unreadable"]],
    ["a revoked proxy", revoked.proxy, ["unreadable"]],
    ["a circle", circle, ["too-deep"]],
    ["a circle that branches", bushyCircle, ["too-large"]],
    ["an empty list of two thousand million", { ...twoElements, elements: hollow }, ["too-large"]],
    ["a million elements", { ...twoElements, elements: Array.from({ length: 1e6 }, () => 7) }, ["too-large"]],
    ["five hundred lists of five hundred", { ...twoElements, lists: square }, ["too-large"]],
    ["eleven million characters", { ...twoElements, remark: "x".repeat(11e6) }, ["too-large"]],
    ["a function", { ...twoElements, note: () => 1 }, ["not-plain-data"]],
    ["a bigint, a symbol and a map", { a: 1n, b: Symbol("s"), c: new Map() }, Array(3).fill("not-plain-data")],
    ["a big byte array", new Uint8Array(1e7), ["not-plain-data"]],
  ])("%s", (_, candidate, codes) => {
    const result = checkPlan(candidate);
    expect(result.ok ? [] : result.problems.map((problem) => problem.code)).toEqual(codes);
  });
  test("a getter that answers differently each time cannot slip a bad value past the check", () => {
    let asked = 0;
    const sly = {
      ...twoElements,
      get frequency_MHz() {
        return asked++ === 0 ? 7.05 : Number.NaN;
      },
    };
    const result = checkPlan(sly);
    expect(result.ok && result.value.frequency_MHz).toBe(asked === 1 ? 7.05 : "bad");
  });
});
