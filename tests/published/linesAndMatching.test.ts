import { describe, expect, test } from "vitest";
import {
  analyseLadder,
  antennaImpedance,
  chainLoss_dB,
  type LineType,
  lineChain,
  lineReadout,
  lineTypes,
  lossWithSwr_dB,
  makeLine,
  matchedLoss_dB,
  matchLNetwork,
  mismatchReadout,
  solveWires,
  swr,
  swrAtRig,
} from "../../engine/index.ts";
import { fitLineLoss } from "../../engine/network/line/fitLineLoss.ts";
import { matchQuarterWave } from "../../engine/network/match/matchQuarterWave.ts";
import { matchShuntCoil } from "../../engine/network/match/matchShuntCoil.ts";
import { internalImpedance } from "../../engine/wires/internalImpedance.ts";
import fixture from "../fixtures/network/linesAndMatching.json" with { type: "json" };
import practice from "../fixtures/network/practice.json" with { type: "json" };
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import type { FixtureRow } from "../support/FixtureRow.ts";
import { okValue } from "../support/okValue.ts";
import { rowsOf } from "../support/rowsOf.ts";
import { uprights } from "../support/uprights.ts";

const FEET100_m = 30.48;
const listed = (row: FixtureRow): LineType => lineTypes.find((t) => t.id === row.conditions.line)!;
const list = (row: FixtureRow, name: string): readonly number[] => row.conditions[name] as number[];
const each = (...ids: string[]) => rowsOf(fixture, ...ids).map((row) => [row.id, row] as const);
const antenna = (row: FixtureRow) => ({ re: condition(row, "load_re_ohm"), im: condition(row, "load_im_ohm") });

/** Every row has been used by the end, or is named here with the reason. */
const used = new Set<string>();
const use = (row: FixtureRow): FixtureRow => {
  used.add(row.id);
  return row;
};

describe("the table of cables", () => {
  test.each(each("9-01", "9-02", "9-03", "9-04"))("loss at 10, 30 and 50 MHz, row %s", (_, row) => {
    const line = okValue(makeLine(listed(use(row))));
    const loss = list(row, "frequency_hz").map((f) => matchedLoss_dB(line, FEET100_m, f / 1e6));
    expect(excess(row, loss)).toBeLessThanOrEqual(1);
  });

  test("a row that no cable of metal and insulation can follow: the fit keeps to its ends", () => {
    const [row] = rowsOf(fixture, "9-05");
    const [at10, at30, at50] = use(row!).value as readonly [number, number, number];
    // Any k₁√f + k₂f grows at least as √f. From 30 to 50 MHz the printed losses grow less, even if each is off by
    // half its last place: so 2.0 dB at 30 MHz is too high (or 2.3 at 50 too low), whatever the cable.
    expect((at50 + 0.05) / (at30 - 0.05)).toBeLessThan(Math.sqrt(50 / 30));
    const line = okValue(makeLine(listed(row!)));
    const loss = list(row!, "frequency_hz").map((f) => matchedLoss_dB(line, FEET100_m, f / 1e6));
    expect(excess({ ...row!, value: [at10, at50] }, [loss[0]!, loss[2]!])).toBeLessThanOrEqual(1);
    expect(excess(row!, loss)).toBeLessThan(1.3);
  });

  test.each(each("9-06", "9-07"))("loss at 50 MHz, row %s", (_, row) => {
    const line = okValue(makeLine(listed(use(row))));
    expect(excess(row, matchedLoss_dB(line, 100, condition(row, "frequency_hz") / 1e6))).toBeLessThanOrEqual(1);
  });

  test.each(each("9-08", "9-09"))("two constants hold a foam cable: row %s through two of its points", (_, row) => {
    // Carried as they are.
    const [root, linear] = use(row).value as readonly number[];
    const line = okValue(makeLine(listed(row)));
    expect(line.root_dBPer100m * 0.3048).toBeCloseTo(root!, 12);
    expect(line.linear_dBPer100m * 0.3048).toBeCloseTo(linear!, 12);
    // Losses worked out from the printed constants bring the constants back.
    const at = (f: number) => ({ frequency_MHz: f, loss_dBPer100m: root! * Math.sqrt(f) + linear! * f });
    const two = fitLineLoss([at(7), at(50)]);
    expect(two.root_dBPer100m).toBeCloseTo(root!, 12);
    expect(two.linear_dBPer100m).toBeCloseTo(linear!, 12);
    // The printed fit against the same cable's printed losses: two sources of one cable.
    const [table] = rowsOf(fixture, row.id === "9-08" ? "9-01" : "9-03");
    const loss = list(table!, "frequency_hz").map((f) => matchedLoss_dB(line, FEET100_m, f / 1e6));
    expect(excess(table!, loss)).toBeLessThanOrEqual(1);
  });

  test("velocity factors of the three insulations", () => {
    const [row] = rowsOf(fixture, "9-10");
    use(row!);
    const of = (id: string) => lineTypes.find((t) => t.id === id)!.velocityFactor;
    for (const solid of ["rg-58c", "rg-213", "rg-59b", "rg-11a"])
      expect(excess(row!, [of(solid), of("rg-8x"), of("air-10-50")])).toBeLessThanOrEqual(1);
  });
});

describe("loss of a mismatched line", () => {
  const ids = ["9-20", "9-21", "9-22", "9-24", "9-25", "9-26", "9-28", "9-29", "9-30", "9-32", "9-33"];
  test.each(each(...ids))("closed form, and the chain matrix for any length, row %s", (_, row) => {
    const matched = condition(use(row), "matched_loss_db");
    const s = condition(row, "load_swr");
    expect(excess(row, lossWithSwr_dB(matched, s))).toBeLessThanOrEqual(1);
    for (const length_m of [3, 20, 31.4]) {
      const line = realLine(matched, length_m, 7.1);
      const found = okValue(lineReadout(line, length_m, 7.1, { re: 50 / s, im: 0 }));
      expect(excess(row, found.totalLoss_dB)).toBeLessThanOrEqual(1);
      expect(found.swrAtRig).toBeCloseTo(swrAtRig(matched, s), 9);
      expect(found.matchedLoss_dB).toBeCloseTo(matched, 12);
    }
  });

  test.each(each("9-40", "9-41"))("impedance at the rig, and back again, row %s", (_, row) => {
    const line = realLine(condition(use(row), "matched_loss_db"), condition(row, "length_m"), 7.1);
    const found = okValue(lineReadout(line, condition(row, "length_m"), 7.1, antenna(row)));
    expect(excess(row, found.rigImpedance_ohm)).toBeLessThanOrEqual(1);
    const back = antennaImpedance(lineChain(line, condition(row, "length_m"), 7.1), found.rigImpedance_ohm);
    expect(Math.hypot(back.re - antenna(row).re, back.im - antenna(row).im)).toBeLessThan(1e-10);
    // Stated in words in the row: 0.6131 dB and SWR 1.874.
    if (row.id === "9-41") {
      expect(Math.abs(found.totalLoss_dB - 0.6131)).toBeLessThanOrEqual(0.00006);
      expect(Math.abs(found.swrAtRig - 1.874)).toBeLessThanOrEqual(0.0006);
    }
  });

  test("total loss of that line", () => {
    const [row] = rowsOf(fixture, "9-42");
    const line = realLine(condition(use(row!), "matched_loss_db"), 30, 7.1);
    expect(excess(row!, chainLoss_dB(lineChain(line, 30, 7.1), antenna(row!)))).toBeLessThanOrEqual(1);
  });

  test("what the trade quotes: flattered meters and growing losses", () => {
    const [rig, loss] = rowsOf(practice, "rig-swr", "line-loss");
    expect(
      excess(
        rig!,
        list(rig!, "matched_loss_db").map((ml) => swrAtRig(ml, 3)),
      ),
    ).toBeLessThanOrEqual(1);
    expect(
      excess(
        loss!,
        list(loss!, "antenna_swr").map((s) => lossWithSwr_dB(1, s)),
      ),
    ).toBeLessThanOrEqual(1);
  });
});

test.each(each("9-45", "9-46", "9-48", "9-49"))("SWR, return loss, mismatch loss, row %s", (_, row) => {
  const found = mismatchReadout(antenna(use(row)), condition(row, "z0_ohm"));
  expect(excess(row, [found.swr, found.returnLoss_dB, found.mismatchLoss_dB])).toBeLessThanOrEqual(1);
  expect(found.swr).toBe(swr(antenna(row).re, antenna(row).im, 50));
});

describe("matches", () => {
  /** Reactance of the series arm and of the part across of an L network, from its parts at 7.1 MHz. */
  const arms = (row: FixtureRow, series: "coil" | "capacitor", shunt: "coil" | "capacitor") => {
    const all = matchLNetwork(antenna(row), 7.1, 50);
    const one = all.find((t) => t.shuntAt === "rig" && t.series === series && t.shunt === shunt)!;
    const { ladder } = okValue(one.match);
    expect(analyseLadder(ladder, 7.1, antenna(row), 50).swr).toBeLessThan(1.000001);
    const reactance = (i: number) => {
      const part = ladder[i]!;
      const w = 2 * Math.PI * 7.1;
      if ("inductance_uH" in part) return w * part.inductance_uH;
      return "capacitance_pF" in part ? -1e6 / (w * part.capacitance_pF) : Number.NaN;
    };
    return [reactance(0), reactance(1)] as const;
  };

  test.each(each("9-52", "9-53", "9-54", "9-56"))("L network of a resistance, row %s", (_, row) => {
    for (const [series, shunt] of [
      ["coil", "capacitor"],
      ["capacitor", "coil"],
    ] as const) {
      const [x, across] = arms(use(row), series, shunt);
      const q = Math.abs(x) / antenna(row).re;
      expect(excess(row, [q, Math.abs(x), Math.abs(across)])).toBeLessThanOrEqual(1);
      expect(Math.sign(x)).toBe(-Math.sign(across));
    }
  });

  test("L network of an impedance: both solutions", () => {
    const [row] = rowsOf(fixture, "9-58");
    const [up, acrossUp] = arms(use(row!), "coil", "capacitor");
    const [down, acrossDown] = arms(row!, "capacitor", "coil");
    expect(excess(row!, [up, down, -acrossUp])).toBeLessThanOrEqual(1);
    expect(excess(row!, [up, down, acrossDown])).toBeLessThanOrEqual(1);
  });

  test("coil across the feed of a shortened element, as the trade quotes it", () => {
    const [row] = rowsOf(practice, "shunt-coil");
    const coils = list(row!, "resistance_ohm").map((re) => {
      const { ladder } = okValue(matchShuntCoil({ re, im: 0 }, 7.1, 50));
      const coil = ladder.at(-1)!;
      return "inductance_uH" in coil ? coil.inductance_uH : Number.NaN;
    });
    expect(excess(row!, coils)).toBeLessThanOrEqual(1);
  });

  test("two parallel 75 ohm lines bring 28.1 ohm to 50", () => {
    const [row] = rowsOf(practice, "parallel-75");
    const line = okValue(makeLine({ ...lineTypes.find((t) => t.id === "rg-11a")!, loss: lossless }));
    const match = okValue(matchQuarterWave({ re: row!.value as number, im: 0 }, 7.1, 50, line, 2));
    const section = match.ladder[0]!;
    expect(section.kind === "line" && section.length_m).toBeCloseTo((0.66 * 299.792458) / 7.1 / 4, 9);
    // 28.1 is 28.125 to the place printed: 50.04 ohm at the rig.
    const rig = analyseLadder(match.ladder, 7.1, { re: row!.value as number, im: 0 }, 50).impedance_ohm;
    expect(Math.abs(rig.re - 50)).toBeLessThanOrEqual(50 * (0.05 / 28.1));
    expect(excess(row!, 37.5 ** 2 / 50)).toBeLessThanOrEqual(1);
  });
});

describe("metal", () => {
  test.each(each("9-62", "9-63", "9-64", "9-65"))(
    "skin depth in copper from a thick rod's reactance, row %s",
    (_, row) => {
      const sigma = condition(use(row), "conductivity_s_per_m");
      // A metre of radius is flat to the skin: the reactance is 1/(2πaσδ) to (δ/a)².
      const { im } = internalImpedance(condition(row, "frequency_hz"), 1, sigma);
      expect(excess(row, 1000 / (2 * Math.PI * sigma * im))).toBeLessThanOrEqual(1);
    },
  );

  test.each(each("9-70", "9-72", "9-73", "9-74", "9-76", "9-77"))("resistance of round wire, row %s", (_, row) => {
    const sigma = condition(use(row), "conductivity_s_per_m");
    const { re } = internalImpedance(condition(row, "frequency_hz"), condition(row, "diameter_m") / 2, sigma);
    expect(excess(row, 1000 * re)).toBeLessThanOrEqual(1);
  });

  test("loss of a quarter-wave copper vertical, at its base: sinusoidal current, and what is solved tends to it", () => {
    const [row] = rowsOf(fixture, "9-78");
    const f = condition(use(row!), "frequency_hz");
    const wave_m = 299_792_458 / f;
    const length_m = condition(row!, "height_over_lambda") * wave_m;
    // ∫ cos² over a quarter wave is λ/8.
    const sinusoidal = (radius_m: number, sigma: number) => (internalImpedance(f, radius_m, sigma).re * wave_m) / 8;
    const sigma = condition(row!, "conductivity_s_per_m");
    const radius_m = condition(row!, "diameter_m") / 2;
    expect(excess(row!, sinusoidal(radius_m, sigma))).toBeLessThanOrEqual(1);
    // The row's current is sinusoidal; a real wire's is so only in the limit of no thickness, with an excess of about
    // 1/(2 ln 2h/a): 6 % for this wire, beyond the row's 3 %. Thinner wires, made better conductors to the same degree:
    const thin = [1, 1e-2, 1e-4].map((thinner) => {
      const conductivity_SPerM = sigma / thinner ** 2;
      const wire = { length_m, radius_m: radius_m * thinner, conductivity_SPerM };
      const solved = okValue(solveWires(uprights(f, { kind: "perfect" }, [wire])));
      const { re, im } = solved.ports[0]!.current_A;
      const base_ohm = (2 * solved.conductorLoss_W) / (re * re + im * im);
      const over = base_ohm / sinusoidal(wire.radius_m, conductivity_SPerM) - 1;
      return { base_ohm, times: over * 2 * Math.log((2 * length_m) / wire.radius_m) };
    });
    for (const { times } of thin) expect(Math.abs(times - 1.1)).toBeLessThan(0.2);
    expect(excess(row!, thin.at(-1)!.base_ohm)).toBeLessThanOrEqual(1);
  });
});

test("no row of the fixture is left out", () => {
  expect(fixture.map((row) => row.id).filter((id) => !used.has(id))).toEqual([]);
});

const lossless = { root_dBPer100m: 0, linear_dBPer100m: 0 };

/** 50 ohm real, velocity factor 0.66, so much loss in so many metres at one frequency. */
function realLine(loss_dB: number, length_m: number, frequency_MHz: number) {
  return okValue(
    makeLine({
      id: "free",
      name: "free entry",
      impedance_ohm: 50,
      velocityFactor: 0.66,
      loss: [{ frequency_MHz, loss_dBPer100m: (100 * loss_dB) / length_m }],
      impedanceAngle: "real",
    }),
  );
}
