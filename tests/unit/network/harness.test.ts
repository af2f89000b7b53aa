import { add, type Complex as Cx, complex, cosh, divide, multiply, sinh, subtract } from "mathjs";
import { describe, expect, test } from "vitest";
import {
  assessHarness,
  type Complex,
  delayHarness,
  drivePoints,
  equalVoltageHarness,
  type Line,
  type Network,
  oddQuarters_m,
  type Part,
  type PhasedHarnessRequest,
  phasedHarness,
  solveNetwork,
} from "../../../engine/index.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";

const F = 7.1;
/** Two verticals a quarter wave apart over soil, not quite alike. */
const pair: readonly (readonly Complex[])[] = [
  [
    { re: 44, im: 2 },
    { re: 19, im: -13 },
  ],
  [
    { re: 19, im: -13 },
    { re: 46, im: -1 },
  ],
];
const lossy75 = aLine(75, 0.66, { loss: { root_dBPer100m: 0.7, linear_dBPer100m: 0.03 } });
const lossy50 = aLine(50, 0.66, { loss: { root_dBPer100m: 0.7, linear_dBPer100m: 0.03 } });
const ideal75 = aLine(75);
const polar = (size: number, deg: number): Complex => ({
  re: size * Math.cos((deg * Math.PI) / 180),
  im: size * Math.sin((deg * Math.PI) / 180),
});
const gap = (a: Complex, b: Complex) => Math.hypot(a.re - b.re, a.im - b.im);
const messages = (result: ReturnType<typeof phasedHarness>) => (result.ok ? [] : result.problems.map((p) => p.message));

/* Complex arithmetic and chain matrices of another make, for the sums by hand. */
const c = (z: Complex): Cx => complex(z.re, z.im);
const times = (...f: Cx[]): Cx => f.reduce((a, b) => multiply(a, b) as Cx);
const plus = (...f: Cx[]): Cx => f.reduce((a, b) => add(a, b));
const over = (a: Cx, b: Cx): Cx => divide(a, b) as Cx;
type M = readonly [Cx, Cx, Cx, Cx];
/** A lossy line by its four constants per metre: R, G from its losses, L, C from Z₀ and velocity, to first order. */
function byHand(line: Line, length_m: number): M {
  const np = Math.LN10 / 20 / 100;
  const metal = line.root_dBPer100m * Math.sqrt(F) * np;
  const insulation = line.linear_dBPer100m * F * np;
  const beta = (2 * Math.PI * F * 1e6) / (line.velocityFactor * 299_792_458);
  const turn = line.impedanceAngle === "real" ? 0 : (metal - insulation) / beta;
  const z0 = complex(line.impedance_ohm, -line.impedance_ohm * turn);
  const gl = complex((metal + insulation) * length_m, beta * length_m);
  return [cosh(gl), times(z0, sinh(gl)), over(sinh(gl), z0), cosh(gl)];
}
const then = (m: M, n: M): M => [
  plus(times(m[0], n[0]), times(m[1], n[2])),
  plus(times(m[0], n[1]), times(m[1], n[3])),
  plus(times(m[2], n[0]), times(m[3], n[2])),
  plus(times(m[2], n[1]), times(m[3], n[3])),
];

describe("against sums by hand with chain matrices", () => {
  test("equal lines and a delay line: base currents, input impedance, loss", () => {
    const design = okValue(
      delayHarness({
        impedance_ohm: pair,
        frequency_MHz: F,
        ratio: polar(1, -90),
        feeder: lossy50,
        feeder_m: 12,
        delay: lossy75,
        delay_m: 6.5,
      }),
    );
    const found = okValue(solveNetwork(design.network, pair, F, 400));
    // One volt at the tee: aᵢVᵢ + bᵢIᵢ = 1 with V = ZI, two equations by Cramer.
    const one = byHand(lossy50, 12);
    const two = then(byHand(lossy75, 6.5), byHand(lossy50, 12));
    const [z11, z12, z22] = [c(pair[0]![0]!), c(pair[0]![1]!), c(pair[1]![1]!)];
    const k11 = plus(times(one[0], z11), one[1]);
    const k12 = times(one[0], z12);
    const k21 = times(two[0], z12);
    const k22 = plus(times(two[0], z22), two[1]);
    const det = subtract(times(k11, k22), times(k12, k21));
    const i1 = over(subtract(k22, k12), det);
    const i2 = over(subtract(k11, k21), det);
    const v1 = plus(times(z11, i1), times(z12, i2));
    const v2 = plus(times(z12, i1), times(z22, i2));
    const input = plus(times(one[2], v1), times(one[3], i1), times(two[2], v2), times(two[3], i2));
    expect(gap(found.currentRatios[1]!, over(i2, i1))).toBeLessThan(1e-12);
    expect(gap(found.inputImpedance_ohm, over(complex(1, 0), input))).toBeLessThan(1e-10);
    const radiated = v1.re * i1.re + v1.im * i1.im + v2.re * i2.re + v2.im * i2.im;
    expect(found.loss_dB).toBeCloseTo(10 * Math.log10(input.re / radiated), 10);
    expect(found.antenna_W).toBeCloseTo((400 * radiated) / input.re, 8);
    // Ends of the delay line at 400 W.
    const up = Math.sqrt((2 * 400) / input.re);
    const delayed = plus(times(byHand(lossy50, 12)[0], v2), times(byHand(lossy50, 12)[1], i2));
    const part = found.parts.find((p) => p.id === "delay line")!;
    expect(Math.hypot(part.to.voltage_V.re, part.to.voltage_V.im)).toBeCloseTo(
      up * Math.hypot(delayed.re, delayed.im),
      8,
    );
    const into = plus(times(two[2], v2), times(two[3], i2));
    expect(Math.hypot(part.from.current_A.re, part.from.current_A.im)).toBeCloseTo(
      up * Math.hypot(into.re, into.im),
      9,
    );
    expect(part.current_Apeak).toBeGreaterThanOrEqual(up * Math.hypot(into.re, into.im) - 1e-12);
    expect(part.voltage_Vrms).toBeCloseTo(part.voltage_Vpeak / Math.SQRT2, 12);
    // Not the ratio that the length suggests.
    expect(gap(found.currentRatios[1]!, polar(1, -90))).toBeGreaterThan(0.1);
  });

  test("L network before a quarter wave, parts with loss", () => {
    const quarter = oddQuarters_m(lossy75, F, 1);
    const request: PhasedHarnessRequest = {
      impedance_ohm: pair,
      frequency_MHz: F,
      ratio: polar(1, -100),
      lengths_m: [quarter, quarter],
      line: lossy75,
      phasing: "l-network",
      coilQ: 250,
      capacitorQ: 1500,
    };
    const design = okValue(phasedHarness(request));
    const found = okValue(solveNetwork(design.network, pair, F));
    const part = (id: string): Part => design.network.parts.find((p) => p.id === id)!;
    const [series, across] = [part("in series"), part("across")];
    for (const p of [series, across]) expect("q" in p && p.q).toBe(p.kind === "coil" ? 250 : 1500);
    expect(new Set([series.kind, across.kind])).toEqual(new Set(["coil", "capacitor"]));
    const w = 2 * Math.PI * F;
    const impedance = (p: Part): Cx =>
      p.kind === "coil"
        ? complex((w * p.inductance_uH) / p.q!, w * p.inductance_uH)
        : p.kind === "capacitor"
          ? over(complex(1, 0), complex((w * p.capacitance_pF * 1e-6) / p.q!, w * p.capacitance_pF * 1e-6))
          : complex(Number.NaN, 0);
    const one = byHand(lossy75, quarter);
    const nought = complex(0, 0);
    const unit = complex(1, 0);
    const two = then(
      then([unit, impedance(series), nought, unit], [unit, nought, over(unit, impedance(across)), unit]),
      byHand(lossy75, quarter),
    );
    const [z11, z12, z22] = [c(pair[0]![0]!), c(pair[0]![1]!), c(pair[1]![1]!)];
    const k11 = plus(times(one[0], z11), one[1]);
    const k22 = plus(times(two[0], z22), two[1]);
    const i1 = subtract(k22, times(one[0], z12));
    const i2 = subtract(k11, times(two[0], z12));
    expect(gap(found.currentRatios[1]!, over(i2, i1))).toBeLessThan(1e-11);
    expect(found.parts.find((p) => p.id === "in series")!.dissipated_W).toBeGreaterThan(0);
  });

  test("a lone antenna through a line, and one volt's worth of everything in series", () => {
    const network: Network = {
      source: "rig",
      bases: ["base"],
      parts: [
        { id: "r", kind: "resistor", from: "rig", to: "a", resistance_ohm: 5 },
        { id: "l", kind: "coil", from: "a", to: "b", inductance_uH: 1, q: 100 },
        { id: "k", kind: "capacitor", from: "b", to: "base", capacitance_pF: 500 },
      ],
    };
    const found = okValue(solveNetwork(network, [[{ re: 30, im: -7 }]], F, 100));
    const x = 2 * Math.PI * F;
    expect(found.inputImpedance_ohm.re).toBeCloseTo(35 + x / 100, 9);
    expect(found.inputImpedance_ohm.im).toBeCloseTo(x - 7 - 1e6 / (x * 500), 9);
    expect(found.bases[0]!.power_W).toBeCloseTo((100 * 30) / (35 + x / 100), 9);
    expect(found.bases[0]!.current_Arms).toBeCloseTo(Math.sqrt(100 / (35 + x / 100)), 10);
    expect(found.parts[0]!.dissipated_W).toBeCloseTo((100 * 5) / (35 + x / 100), 9);
  });
});

describe("current forcing", () => {
  const quarters = (line: Line, of: readonly [number, number]) =>
    of.map((n) => oddQuarters_m(line, F, n)) as unknown as readonly [number, number];
  const joined = (line: Line, lengths: readonly [number, number]): Network => ({
    source: "tee",
    bases: ["base 1", "base 2"],
    parts: lengths.map((length_m, i) => ({
      id: `line ${i}`,
      kind: "line",
      from: "tee",
      to: `base ${i + 1}`,
      line,
      length_m,
    })),
  });

  test.each([
    ["quarter and quarter", [1, 1], 1],
    ["quarter and three quarters", [1, 3], -1],
    ["five quarters and quarter", [5, 1], 1],
  ] as const)("%s from one tee force equal currents whatever the antenna", (_, of, ratio) => {
    for (const z of [
      pair,
      [
        [
          { re: 5, im: 300 },
          { re: 1, im: 0.5 },
        ],
        [
          { re: 1, im: 0.5 },
          { re: 900, im: -40 },
        ],
      ],
    ]) {
      const found = okValue(solveNetwork(joined(ideal75, quarters(ideal75, of)), z, F));
      expect(gap(found.currentRatios[1]!, { re: ratio, im: 0 })).toBeLessThan(1e-11);
    }
    const even = okValue(solveNetwork(joined(ideal75, [3, 3]), pair, F));
    expect(gap(even.currentRatios[1]!, { re: 1, im: 0 })).toBeGreaterThan(1e-3);
  });

  test("an even number of quarters is a programmer's mistake", () => {
    expect(() => oddQuarters_m(ideal75, F, 2)).toThrow(RangeError);
  });

  test("in phase nothing is needed but the tee; in opposition three quarters in one line", () => {
    const base = { impedance_ohm: pair, frequency_MHz: F, line: ideal75, phasing: "l-network" } as const;
    const same = okValue(phasedHarness({ ...base, ratio: { re: 1, im: 0 }, lengths_m: quarters(ideal75, [1, 1]) }));
    expect(same.network.parts.map((p) => p.kind)).toEqual(["line", "line", "contact"]);
    const opposed = { ...base, ratio: { re: -1, im: 0 } };
    expect(messages(phasedHarness({ ...opposed, lengths_m: quarters(ideal75, [1, 1]) }))[0]).toContain("180 degrees");
    const design = okValue(phasedHarness({ ...opposed, lengths_m: quarters(ideal75, [1, 3]) }));
    const [point] = okValue(assessHarness(design, [{ frequency_MHz: F, impedance_ohm: pair }]));
    expect(gap(point!.ratio, { re: -1, im: 0 })).toBeLessThan(1e-11);
  });
});

describe("designed harnesses give the currents asked for", () => {
  const ratios = [polar(1, -90), polar(1, -115), polar(0.8, -60), polar(1.2, 100), polar(1, 150)];
  const quarter = oddQuarters_m(lossy75, F, 1);
  const at = (design: Parameters<typeof assessHarness>[0]) =>
    okValue(assessHarness(design, [{ frequency_MHz: F, impedance_ohm: pair }]))[0]!;

  test("L and pi, over quarter waves, other lengths, no lines at all; lossy lines included", () => {
    for (const ratio of ratios)
      for (const lengths_m of [
        [quarter, quarter],
        [9, 14],
        [0, 0],
        [0, 5],
      ] as const)
        for (const phasing of ["l-network", "pi-network"] as const)
          for (const straight of [1, 2] as const) {
            const request = {
              impedance_ohm: pair,
              frequency_MHz: F,
              ratio,
              lengths_m,
              line: lossy75,
              phasing,
              straight,
            };
            const design = okValue(phasedHarness(request));
            // The rig's line meets the straight element's own line, or its base where it has none.
            const own = design.network.parts.find((p) => p.id === `line ${straight}`);
            expect(design.network.source).toBe(own ? own.from : `base ${straight}`);
            const point = at(design);
            expect(Math.abs(point.sizeError_dB)).toBeLessThan(1e-9);
            expect(Math.abs(point.phaseError_deg)).toBeLessThan(1e-8);
            expect(point.solution.imbalance).toBeLessThan(1e-12);
          }
  });

  test("a delay line and a part across: exact without loss in the line, refused where its impedance is too low", () => {
    const request = { impedance_ohm: pair, frequency_MHz: F, lengths_m: [quarter, quarter], line: ideal75 } as const;
    let made = 0;
    let refused = 0;
    for (const ratio of ratios)
      for (const delay of [aLine(50), aLine(75), aLine(150)]) {
        const design = phasedHarness({ ...request, ratio, phasing: "line-and-part", delay });
        if (!design.ok) {
          refused++;
          expect(design.problems[0]!.message).toMatch(/must have at least \d+\.\d ohm/);
          continue;
        }
        made++;
        const point = at(design.value);
        expect(gap(point.ratio, ratio)).toBeLessThan(1e-10);
        // The line is the shorter of the two that would do.
        const part = design.value.network.parts.find((p) => p.id === "delay line")!;
        expect(part.kind === "line" && part.length_m < (0.75 * 0.66 * 299.792458) / F).toBe(true);
      }
    expect(made).toBeGreaterThan(3);
    expect(refused).toBeGreaterThan(1);
  });

  test("the pi network's branch is resistive at the tee", () => {
    const request = { impedance_ohm: pair, frequency_MHz: F, ratio: polar(1, -90), line: ideal75 } as const;
    const design = okValue(phasedHarness({ ...request, lengths_m: [quarter, quarter], phasing: "pi-network" }));
    const { solution } = at(design);
    const into = (id: string) => solution.parts.find((p) => p.id === id)!.from.current_A;
    const v = solution.voltages_V.tee!;
    const i = {
      re: into("in series").re + into("across at the tee").re,
      im: into("in series").im + into("across at the tee").im,
    };
    expect(Math.abs(v.re * i.im - v.im * i.re) / (v.re * i.re + v.im * i.im)).toBeLessThan(1e-9);
    // Current forcing without loss: V at both line starts in the ratio of the currents.
    const b = solution.voltages_V.phased!;
    expect(
      gap(
        {
          re: (b.re * v.re + b.im * v.im) / (v.re ** 2 + v.im ** 2),
          im: (b.im * v.re - b.re * v.im) / (v.re ** 2 + v.im ** 2),
        },
        polar(1, -90),
      ),
    ).toBeLessThan(1e-10);
  });

  test("lines joined where their voltages agree", () => {
    let made = 0;
    for (const ratio of ratios)
      for (const line of [aLine(50), ideal75]) {
        const designs = equalVoltageHarness(pair, F, ratio, line);
        if (!designs.ok) continue;
        expect(designs.value).toHaveLength(2);
        for (const design of designs.value) {
          made++;
          expect(gap(at(design).ratio, ratio)).toBeLessThan(1e-9);
        }
      }
    expect(made).toBeGreaterThan(4);
    const never = equalVoltageHarness(pair, F, polar(12, -90), ideal75);
    expect(never.ok).toBe(false);
    if (!never.ok) expect(never.problems[0]).toMatchObject({ code: "no-match", where: "ratio" });
  });

  test("off the design frequency the errors grow, and are said", () => {
    const design = okValue(
      phasedHarness({
        impedance_ohm: pair,
        frequency_MHz: F,
        ratio: polar(1, -90),
        lengths_m: [quarter, quarter],
        line: lossy75,
        phasing: "l-network",
        coilQ: 250,
      }),
    );
    const points = okValue(
      assessHarness(
        design,
        [7, 7.1, 7.3].map((frequency_MHz) => ({ frequency_MHz, impedance_ohm: pair })),
      ),
    );
    const [below, middle, above] = points.map((p) => Math.abs(p.phaseError_deg) + Math.abs(p.sizeError_dB));
    expect(middle!).toBeLessThan(below!);
    expect(middle!).toBeLessThan(above!);
    expect(middle!).toBeGreaterThan(1e-6); // the coil's loss
    expect(points[1]!.swr).toBeGreaterThan(1);
    const { ratio, sizeError_dB, phaseError_deg } = points[2]!;
    expect(sizeError_dB).toBeCloseTo(20 * Math.log10(Math.hypot(ratio.re, ratio.im)), 10);
    expect(phaseError_deg).toBeCloseTo((Math.atan2(ratio.im, ratio.re) * 180) / Math.PI + 90, 9);
    expect(Math.abs(sizeError_dB)).toBeGreaterThan(0.01);
  });
});

describe("special cases of the network", () => {
  const half: Network = {
    source: "tee",
    bases: ["base"],
    parts: [
      { id: "line", kind: "line", from: "tee", to: "base", line: ideal75, length_m: (0.66 * 299.792458) / F / 2 },
    ],
  };

  test("half a wave without loss shows the antenna itself", () => {
    const found = okValue(solveNetwork(half, [[{ re: 31, im: -9 }]], F));
    expect(gap(found.inputImpedance_ohm, { re: 31, im: -9 })).toBeLessThan(1e-10);
    expect(found.loss_dB).toBeCloseTo(0, 10);
  });

  test("contacts: closed carries current without voltage, open stands voltage without current", () => {
    const network: Network = {
      source: "rig",
      bases: ["base 1", "base 2"],
      parts: [
        { id: "feed 1", kind: "contact", from: "rig", to: "base 1", closed: true },
        { id: "feed 2", kind: "contact", from: "rig", to: "base 2", closed: false },
      ],
    };
    const found = okValue(solveNetwork(network, pair, F, 400));
    const [closed, open] = found.parts;
    const amperes = Math.sqrt(400 / 44);
    expect(closed!.current_Arms).toBeCloseTo(amperes, 10);
    expect(closed!.voltage_Vrms).toBe(0);
    expect(open!.current_Arms).toBeCloseTo(0, 12);
    // Open base: |Z₂₁| I; across the contact what the bases differ by.
    expect(found.bases[1]!.voltage_Vrms).toBeCloseTo(amperes * Math.hypot(19, -13), 9);
    expect(open!.voltage_Vrms).toBeCloseTo(amperes * Math.hypot(44 - 19, 2 + 13), 9);
  });

  test("a matrix that has no inverse is no special case", () => {
    const one = { re: 40, im: 5 };
    const network: Network = {
      source: "tee",
      bases: ["base 1", "base 2"],
      parts: [1, 2].map((i) => ({
        id: `l${i}`,
        kind: "line",
        from: "tee",
        to: `base ${i}`,
        line: ideal75,
        length_m: i * 4,
      })),
    };
    const found = okValue(
      solveNetwork(
        network,
        [
          [one, one],
          [one, one],
        ],
        F,
      ),
    );
    expect(gap(found.bases[0]!.voltage_V, found.bases[1]!.voltage_V)).toBeLessThan(1e-9);
    expect(found.imbalance).toBeLessThan(1e-12);
  });

  test("an element may give power back", () => {
    const close = [
      [
        { re: 36, im: 5 },
        { re: 33, im: 3 },
      ],
      [
        { re: 33, im: 3 },
        { re: 36, im: -5 },
      ],
    ];
    const [strong, weak] = drivePoints(close, [
      { re: 1, im: 0 },
      { re: -0.5, im: 0.1 },
    ]);
    expect(weak!.power_W).toBeLessThan(0);
    expect(strong!.power_W + weak!.power_W).toBeGreaterThan(0);
  });

  test("what cannot be solved is said", () => {
    const code = (network: Network, z: readonly (readonly Complex[])[] = [[{ re: 40, im: 0 }]]) => {
      const result = solveNetwork(network, z, F);
      return result.ok ? "ok" : result.problems.map((p) => `${p.code} ${p.where}`).join(", ");
    };
    const lone: Network = { source: "a", bases: ["a"], parts: [] };
    expect(code(lone)).toBe("ok");
    const part = (rest: object): Network => ({
      ...lone,
      parts: [{ id: "p", from: "a", to: "ground", ...rest } as unknown as Part],
    });
    expect(code(part({ kind: "coil", inductance_uH: 0 }))).toBe("out-of-range parts[0].inductance_uH");
    expect(code(part({ kind: "coil", inductance_uH: 1, q: -5 }))).toBe("out-of-range parts[0].q");
    expect(code(part({ kind: "capacitor", capacitance_pF: -1 }))).toBe("out-of-range parts[0].capacitance_pF");
    expect(code(part({ kind: "line", line: ideal75, length_m: 0 }))).toBe("out-of-range parts[0].length_m");
    expect(code(part({ kind: "resistor", resistance_ohm: Number.NaN }))).toBe("not-finite parts[0].resistance_ohm");
    expect(code(part({ kind: "contact", closed: true }))).toBe("no-solution parts");
    expect(code({ ...lone, parts: [{ id: "c", kind: "coil", from: "x", to: "y", inductance_uH: 1 }] })).toBe(
      "no-solution parts",
    );
    expect(
      code(
        { source: "a", bases: [], parts: [{ id: "c", kind: "coil", from: "a", to: "ground", inductance_uH: 1 }] },
        [],
      ),
    ).toBe("no-power parts");
    expect(code({ ...lone, source: "ground" })).toContain("on-ground source");
    expect(code({ ...lone, bases: ["a", "a"] }, pair)).toBe("same-node bases[1]");
    expect(code(lone, pair)).toBe("wrong-shape impedance_ohm");
    expect(code(lone, [[{ re: Number.NaN, im: 0 }]])).toBe("not-finite impedance_ohm[0][0]");
    expect(
      code({
        ...lone,
        parts: [1, 2].map(() => ({ id: "c", kind: "coil", from: "a", to: "ground", inductance_uH: 1 })),
      }),
    ).toBe("same-id parts[1].id");
    expect(() => drivePoints(pair, [{ re: 1, im: 0 }])).toThrow(RangeError);
  });

  test("bad requests for a harness are named", () => {
    const request = {
      impedance_ohm: pair,
      frequency_MHz: F,
      ratio: polar(1, -90),
      line: ideal75,
      phasing: "l-network",
      lengths_m: [3, 3],
    } as const;
    const where = (r: PhasedHarnessRequest) => {
      const result = phasedHarness(r);
      return result.ok ? [] : result.problems.map((p) => p.where);
    };
    expect(where(request)).toEqual([]);
    expect(where({ ...request, ratio: { re: 0, im: 0 } })).toEqual(["ratio"]);
    const nothing = phasedHarness({ ...request, ratio: { re: 0, im: 0 } });
    expect(messages(nothing)).toEqual(["The current ratio is 0; both elements must carry current to be fed."]);
    expect(where({ ...request, ratio: { re: Number.NaN, im: 0 } })).toEqual(["ratio.re"]);
    expect(where({ ...request, lengths_m: [-1, 3] })).toEqual(["lengths_m[0]"]);
    expect(where({ ...request, coilQ: 0 })).toEqual(["coilQ"]);
    expect(where({ ...request, frequency_MHz: 0 })).toEqual(["frequency_MHz"]);
    expect(where({ ...request, impedance_ohm: [[{ re: 1, im: 0 }]] })).toEqual(["impedance_ohm"]);
    expect(where({ ...request, phasing: "line-and-part" })).toEqual(["delay"]);
    const delay = {
      impedance_ohm: pair,
      frequency_MHz: F,
      ratio: polar(1, -90),
      feeder: ideal75,
      feeder_m: 0,
      delay: ideal75,
    };
    const refused = delayHarness(delay);
    expect(refused.ok ? [] : refused.problems.map((p) => p.where)).toEqual(["feeder_m"]);
    expect(delayHarness({ ...delay, feeder_m: 5, ratio: { re: 1, im: 0 } }).ok).toBe(false);
    expect(delayHarness({ ...delay, feeder_m: 5, delay_m: -1 }).ok).toBe(false);
    const made = okValue(delayHarness({ ...delay, feeder_m: 5 }));
    const line = made.network.parts[0]!;
    expect(line.kind === "line" && line.length_m).toBeCloseTo((0.66 * 299.792458) / F / 4, 9);
    const turned = okValue(delayHarness({ ...delay, feeder_m: 5, ratio: polar(1, 90) }));
    expect(turned.network.parts.find((p) => p.id === "line 1")!.from).toBe("delayed");
  });
});
