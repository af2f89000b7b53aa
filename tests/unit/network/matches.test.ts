import { describe, expect, test } from "vitest";
import {
  analyseLadder,
  assessMatch,
  type Complex,
  designMatches,
  type FeedPoint,
  type Line,
  type MatchRequest,
  matchLNetwork,
  mismatchReadout,
  recommendMatch,
  retrimFraction,
  swr,
} from "../../../engine/index.ts";
import { feedAt } from "../../../engine/network/match/feedAt.ts";
import { isStaticDrained } from "../../../engine/network/match/isStaticDrained.ts";
import { lengthToTurn_m } from "../../../engine/network/match/lengthToTurn_m.ts";
import { matchQuarterWave } from "../../../engine/network/match/matchQuarterWave.ts";
import { matchSeriesSection } from "../../../engine/network/match/matchSeriesSection.ts";
import { matchShuntCoil } from "../../../engine/network/match/matchShuntCoil.ts";
import { matchStub } from "../../../engine/network/match/matchStub.ts";
import { matchTwelfthWave } from "../../../engine/network/match/matchTwelfthWave.ts";
import { spanBelow } from "../../../engine/network/match/spanBelow.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";

const F = 7.1;
const main = aLine(50, 0.66, { id: "main" });
const other = aLine(75, 0.82, { id: "other" });
/** Real and reactive, below and above the line, inside and outside the reach of each match. */
const antennas: readonly Complex[] = [
  { re: 25, im: 0 },
  { re: 24, im: -22 },
  { re: 39, im: 12 },
  { re: 12, im: 35 },
  { re: 90, im: -60 },
  { re: 75, im: 0 },
  { re: 49.5, im: 8 },
];
/** A vertical near resonance: R rises slowly, X with f dX/df = 800 ohm. */
const band = (r: number, x: number, from = 7, to = 7.2): FeedPoint[] =>
  Array.from({ length: 11 }, (_, i) => {
    const f = from + ((to - from) * i) / 10;
    return { frequency_MHz: f, impedance_ohm: { re: r * (f / F) ** 2, im: x + 800 * (f / F - 1) } };
  });
const request = (r: number, x: number, more: Partial<MatchRequest> = {}): MatchRequest => ({
  feed: band(r, x),
  design_MHz: F,
  wanted_ohm: 50,
  swrLimit: 2,
  stock: [main, other],
  ...more,
});
const where = (candidate: MatchRequest) => {
  const result = designMatches(candidate);
  return result.ok ? [] : result.problems.map((p) => p.where);
};

describe("every match put back gives the SWR its closed form promises", () => {
  test.each(antennas.map((z) => [`${z.re} + j${z.im}`, z] as const))("antenna %s ohm", (_, z) => {
    const feed = [{ frequency_MHz: F, impedance_ohm: z }];
    const { matches, refused } = okValue(designMatches(request(0, 0, { feed })));
    const kinds = new Set(matches.map((m) => m.match.kind));
    expect(kinds.has("none") && kinds.has("l-network") && kinds.has("stub")).toBe(true);
    for (const { match, design } of matches) {
      expect(Math.abs(design.swr - match.promisedSwr)).toBeLessThan(1e-6 * match.promisedSwr);
      if (!["none", "quarter-wave", "twelfth-wave"].includes(match.kind)) expect(design.swr).toBeLessThan(1.001);
      if (match.kind !== "none") expect(design.swr).toBeLessThan(swr(z.re, z.im, 50));
      expect(Math.abs(design.loss_dB)).toBeLessThan(1e-9);
    }
    for (const { problem } of refused) expect(problem.message).toMatch(/\d/);
    // Eight L networks, found or refused.
    const count = matches.filter((m) => m.match.kind === "l-network").length;
    expect(count + refused.filter((r) => r.kind === "l-network").length).toBe(8);
  });
});

describe("L networks", () => {
  const made = (z: Complex) =>
    matchLNetwork(z, F, 50).flatMap((t) => (t.match.ok ? [`${t.shuntAt}: ${t.series}, ${t.shunt}`] : []));

  test("which of the eight can be, and why the others cannot", () => {
    expect(made({ re: 25, im: 0 })).toEqual(["rig: coil, capacitor", "rig: capacitor, coil"]);
    expect(made({ re: 100, im: 0 })).toEqual(["antenna: coil, capacitor", "antenna: capacitor, coil"]);
    // Much reactance: the arm in series takes it away and more, or leaves enough; both orders and same-kind arms.
    expect(made({ re: 25, im: 60 })).toEqual([
      "rig: capacitor, coil",
      "rig: capacitor, capacitor",
      "antenna: coil, capacitor",
      "antenna: capacitor, capacitor",
    ]);
    expect(made({ re: 25, im: -60 })).toEqual([
      "rig: coil, coil",
      "rig: coil, capacitor",
      "antenna: coil, coil",
      "antenna: capacitor, coil",
    ]);
    const messages = matchLNetwork({ re: 100, im: 0 }, F, 50).map((t) =>
      t.match.ok ? "" : t.match.problems[0]!.message,
    );
    expect(messages[0]).toContain("the resistance is 100.0 ohm and must be at most 50 ohm");
    expect(messages[4]).toContain("50.0 ohm of coil in series with 100.0 ohm of capacitor across");
  });

  test("a resistance equal to the line's needs one part or none", () => {
    const { match } = matchLNetwork({ re: 50, im: 30 }, F, 50).find(
      (t) => t.shuntAt === "rig" && t.series === "capacitor" && t.shunt === "capacitor",
    )!;
    expect(okValue(match).ladder.map((s) => s.kind)).toEqual(["series-capacitor"]);
    const all = matchLNetwork({ re: 50, im: 0 }, F, 50).map((t) => (t.match.ok ? "" : t.match.problems[0]!.message));
    for (const message of all) expect(message).toContain("the antenna shows 50 ohm without it");
  });
});

describe("sections of line", () => {
  const promised = (z: Complex, line: Line, parallel: 1 | 2) => {
    const match = matchQuarterWave(z, F, 50, line, parallel);
    return match.ok ? match.value.promisedSwr : undefined;
  };

  test("no other length of the same section does better", () => {
    for (const z of antennas)
      for (const parallel of [1, 2] as const) {
        const match = matchQuarterWave(z, F, 50, other, parallel);
        const lowest = Math.min(
          ...Array.from({ length: 2000 }, (_, i) => {
            const length_m = ((i / 2000) * (0.82 * 299.792458)) / F / 2;
            return analyseLadder([{ kind: "line", line: other, length_m, parallel }], F, z, 50).swr;
          }),
        );
        const best = match.ok ? match.value.promisedSwr : swr(z.re, z.im, 50);
        expect(best).toBeLessThanOrEqual(lowest + 1e-9);
        expect(best).toBeGreaterThan(lowest - 0.01 * lowest);
      }
  });

  test("a section that cannot help is refused with what would", () => {
    expect(promised({ re: 112.5, im: 0 }, other, 1)).toBeCloseTo(1, 9);
    expect(promised({ re: 45, im: 0 }, other, 1)).toBeUndefined();
    const refused = matchQuarterWave({ re: 45, im: 0 }, F, 50, other, 1);
    if (!refused.ok) expect(refused.problems[0]!.message).toContain("47.4 ohm would be right");
  });

  test("the series section reaches its limit and not beyond", () => {
    // n = 1.5: up to n² = 2.25 : 1.
    expect(matchSeriesSection({ re: 50 / 2.249, im: 0 }, F, 50, main, other).ok).toBe(true);
    const beyond = matchSeriesSection({ re: 50 / 2.251, im: 0 }, F, 50, main, other);
    expect(beyond.ok).toBe(false);
    if (!beyond.ok) expect(beyond.problems[0]!.message).toContain("up to 2.25, and the antenna's is 2.25");
    expect(matchSeriesSection({ re: 50, im: 0 }, F, 50, main, other).ok).toBe(false);
    const wrong = matchSeriesSection({ re: 30, im: 0 }, F, 50, other, main);
    if (!wrong.ok) expect(wrong.problems[0]!.where).toBe("main");
    expect(wrong.ok).toBe(false);
  });

  test("twelfth-wave sections: exact between their own impedances, 29.3 degrees for 50 and 75", () => {
    const match = okValue(matchTwelfthWave({ re: 75, im: 0 }, F, 50, main, other));
    expect(match.promisedSwr).toBeCloseTo(1, 9);
    const part = match.ladder[0]!;
    // Common practice quotes 29.3 degrees, 0.0815 wave (from memory).
    expect(part.kind === "line" && (360 * part.length_m) / ((0.66 * 299.792458) / F)).toBeCloseTo(29.3, 1);
    expect(matchTwelfthWave({ re: 50, im: 0 }, F, 50, main, other).ok).toBe(false);
  });

  test("a reflection that is where it should be, up to rounding, is not turned once round", () => {
    expect(lengthToTurn_m(main, F, -1e-17, 0)).toBe(0);
    expect(lengthToTurn_m(main, F, Math.PI, 0)).toBeCloseTo((0.66 * 299.792458) / F / 4, 12);
    expect(lengthToTurn_m(main, F, 0, Math.PI / 2)).toBeCloseTo((0.75 * 0.66 * 299.792458) / F / 2, 12);
  });

  test("single and paralleled lines are tried for every kind of section", () => {
    const { matches, refused } = okValue(designMatches(request(25, 0)));
    for (const kind of ["quarter-wave", "series-section", "twelfth-wave"] as const) {
      const pairs = matches.filter(
        ({ match }) => match.kind === kind && match.ladder.some((s) => s.kind === "line" && s.parallel === 2),
      );
      expect(pairs.length).toBeGreaterThan(0);
      const tried = new Set(matches.filter(({ match }) => match.kind === kind).map(({ match }) => match.name));
      // Of 50 and 75 ohm lines, one or two: all but the single 50 ohm.
      expect(tried.size + refused.filter((r) => r.kind === kind).length).toBe(3);
    }
  });

  test("stub: four solutions, least cable first, each below half a wave", () => {
    const stubs = okValue(matchStub({ re: 25, im: 10 }, F, 50, main));
    expect(stubs).toHaveLength(4);
    const cable = stubs.map(({ ladder }) => ladder.reduce((sum, s) => sum + ("length_m" in s ? s.length_m : 0), 0));
    expect(cable).toEqual([...cable].sort((a, b) => a - b));
    for (const { ladder } of stubs)
      for (const s of ladder) expect("length_m" in s && s.length_m < (0.66 * 299.792458) / F / 2).toBe(true);
    expect(matchStub({ re: 50, im: 0 }, F, 50, main).ok).toBe(false);
  });
});

describe("coil across the feed", () => {
  test("above the line's impedance it is refused by name and number", () => {
    const refused = matchShuntCoil({ re: 62, im: 0 }, F, 50);
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(refused.problems[0]!.message).toMatch(/62\.0 ohm to 50 ohm.*loss in the ground/);
    expect(matchShuntCoil({ re: 49.4, im: 0 }, F, 50).ok).toBe(true);
    expect(matchShuntCoil({ re: 49.6, im: 0 }, F, 50).ok).toBe(false);
  });

  test("an element that is short enough already is not retrimmed", () => {
    const match = okValue(matchShuntCoil({ re: 25, im: -25 }, F, 50));
    expect(match.ladder.map((s) => s.kind)).toEqual(["shunt-coil"]);
    expect(match.notes).toEqual([]);
    const cut = okValue(matchShuntCoil({ re: 25, im: 5 }, F, 50));
    expect(cut.notes[0]).toMatchObject({ code: "retrim" });
    expect(cut.notes[0]!.measured).toBeCloseTo(-30, 12);
  });

  test("how much to cut: about 3 % for −25 ohm on a thin wire", () => {
    expect(retrimFraction(band(39, 0), F, -24)).toBeCloseTo(-0.03, 6);
    expect(retrimFraction([band(39, 0)[0]!], F, -24)).toBeUndefined();
  });
});

describe("put back over a band, with loss", () => {
  test("loss of coil and capacitor by hand", () => {
    // 25 ohm, L network: series coil 25 ohm with Q 100 is 0.25 ohm in series, capacitor of 50 ohm with Q 1000 across.
    const match = okValue(
      matchLNetwork({ re: 25, im: 0 }, F, 50, { coilQ: 100, capacitorQ: 1000 }).find(
        (t) => t.match.ok && t.series === "coil",
      )!.match,
    );
    const found = analyseLadder(match.ladder, F, { re: 25, im: 0 }, 50, 200);
    const branch = { re: 25.25, im: 25 };
    const size2 = branch.re ** 2 + branch.im ** 2;
    const conductance = branch.re / size2 + 1 / 50 / 1000;
    const toAntenna = 25 / size2 / conductance;
    expect(found.loss_dB).toBeCloseTo(-10 * Math.log10(toAntenna), 10);
    expect(found.sections[0]!.dissipated_W).toBeCloseTo((200 * 0.25) / size2 / conductance, 9);
    expect(found.sections[1]!.dissipated_W).toBeCloseTo(200 / 50 / 1000 / conductance, 9);
    expect(found.antenna.power_W).toBeCloseTo(200 * toAntenna, 9);
    expect(found.antenna.current_Arms).toBeCloseTo(Math.sqrt((200 * toAntenna) / 25), 10);
    // Stresses: the capacitor has the whole input's voltage, the coil its current times 25 ohm.
    expect(found.sections[1]!.voltage_Vrms).toBeCloseTo(Math.sqrt(200 / conductance), 9);
    expect(found.sections[0]!.current_Arms).toBeCloseTo(found.antenna.current_Arms, 10);
    expect(found.sections[0]!.voltage_Vrms).toBeCloseTo(found.antenna.current_Arms * Math.hypot(25, 0.25), 9);
    expect(found.sections[1]!.current_Arms).toBeCloseTo(found.sections[1]!.voltage_Vrms / 50 / Math.cos(1e-3), 3);
  });

  test("what is lost in the parts is what does not arrive", () => {
    const lossy = [
      aLine(50, 0.66, { id: "main", loss: { root_dBPer100m: 0.6, linear_dBPer100m: 0.02 } }),
      aLine(75, 0.66, { id: "other", loss: { root_dBPer100m: 0.6, linear_dBPer100m: 0.02 } }),
    ];
    const { matches } = okValue(
      designMatches(request(30, 10, { stock: lossy, coilQ: 200, capacitorQ: 1000, power_W: 400 })),
    );
    for (const { match, design } of matches) {
      const lost = design.sections.reduce((sum, s) => sum + s.dissipated_W, 0);
      expect(Math.abs(lost + design.antenna.power_W - 400)).toBeLessThan(1e-9);
      for (const s of design.sections) expect(s.dissipated_W).toBeGreaterThanOrEqual(-1e-9);
      if (match.kind !== "none") expect(design.loss_dB).toBeGreaterThan(0);
    }
  });

  test("span: straight lines between points, open at the ends, none when the limit is missed", () => {
    const f = [1, 2, 3, 4, 5];
    expect(spanBelow(f, [5, 3, 1, 2, 4], 3, 2)).toEqual({
      from_MHz: 2.5,
      to_MHz: 4,
      width_kHz: 1500,
      openBelow: false,
      openAbove: false,
    });
    expect(spanBelow(f, [1, 1, 1, 1, 3], 3, 2)).toMatchObject({
      from_MHz: 1,
      openBelow: true,
      to_MHz: 4.5,
      openAbove: false,
    });
    expect(spanBelow(f, [1, 1, 3, 1, 1], 3, 2)).toBeUndefined();
    expect(spanBelow(f, [1, 1, 1, 1, Number.POSITIVE_INFINITY], 3, 2)).toMatchObject({ to_MHz: 4, openAbove: false });
    expect(spanBelow(f, [1, 1, 1, 1, 1], 2.5, 2)).toBeUndefined();
  });

  test("the curve is the antenna through the ladder, point by point, the design frequency among them", () => {
    const asked = request(39, 12, { design_MHz: 7.09 });
    const none = okValue(designMatches(asked)).matches[0]!;
    expect(none.curve.frequency_MHz).toHaveLength(12);
    expect(none.curve.frequency_MHz).toContain(7.09);
    const at = none.curve.frequency_MHz.indexOf(7.2);
    const { re, im } = asked.feed[10]!.impedance_ohm;
    expect(none.curve.swr[at]).toBeCloseTo(mismatchReadout({ re, im }, 50).swr, 12);
    expect(none.worstSwr).toBe(Math.max(...none.curve.swr));
    // A coil's reactance rises with frequency: put back by hand at the band's edge.
    const coil = assessMatch(okValue(matchShuntCoil({ re: 39, im: 12 }, 7.1, 50)), request(39, 12));
    const [retrim, part] = coil.match.ladder;
    const shift = retrim?.kind === "retrim" ? retrim.reactance_ohm : Number.NaN;
    const x = part && "inductance_uH" in part ? 2 * Math.PI * 7.2 * part.inductance_uH : Number.NaN;
    const edge = { re, im: im + shift };
    const size2 = edge.re ** 2 + edge.im ** 2;
    const y = { re: edge.re / size2, im: -edge.im / size2 - 1 / x };
    const y2 = y.re ** 2 + y.im ** 2;
    expect(coil.curve.swr.at(-1)).toBeCloseTo(swr(y.re / y2, -y.im / y2, 50), 9);
  });

  test("between points only the two on each side count, at the ends the last four", () => {
    const feed = (odd: number) =>
      Array.from({ length: 8 }, (_, i) => ({ frequency_MHz: i, impedance_ohm: { re: i === odd ? 7 : 1, im: 0 } }));
    const counts = (f: number) =>
      feed(0).flatMap((_, odd) => (Math.abs(feedAt(feed(odd), f).re - 1) > 1e-9 ? [odd] : []));
    expect(counts(3.1)).toEqual([2, 3, 4, 5]);
    expect(counts(0.5)).toEqual([0, 1, 2, 3]);
    expect(counts(6.5)).toEqual([4, 5, 6, 7]);
  });

  test("between points the feed is the cubic through four of them", () => {
    const cubic = (f: number) => ({ re: f ** 3, im: 2 - f ** 2 });
    const feed = [1, 2, 4, 5, 7].map((f) => ({ frequency_MHz: f, impedance_ohm: cubic(f) }));
    for (const f of [1, 1.5, 3, 6.9, 7]) {
      expect(feedAt(feed, f).re).toBeCloseTo(cubic(f).re, 9);
      expect(feedAt(feed, f).im).toBeCloseTo(cubic(f).im, 9);
    }
  });
});

test("static drains through a coil or a shorted stub across, not past a capacitor in series", () => {
  const coil = { kind: "shunt-coil", inductance_uH: 1 } as const;
  const block = { kind: "series-capacitor", capacitance_pF: 100 } as const;
  const stub = { kind: "stub", line: main, length_m: 1 } as const;
  expect(isStaticDrained([])).toBe(false);
  expect(isStaticDrained([coil])).toBe(true);
  expect(isStaticDrained([block, coil])).toBe(false);
  expect(isStaticDrained([coil, block])).toBe(true);
  expect(isStaticDrained([{ ...stub, end: "open" }])).toBe(false);
  expect(
    isStaticDrained([
      { kind: "line", line: main, length_m: 3, parallel: 1 },
      { ...stub, end: "shorted" },
    ]),
  ).toBe(true);
  expect(isStaticDrained([{ kind: "series-coil", inductance_uH: 1 }])).toBe(false);
});

describe("the recommendation", () => {
  const advised = (r: number, x: number, more: Partial<MatchRequest> = {}) => {
    const asked = request(r, x, more);
    return recommendMatch(okValue(designMatches(asked)).matches, asked.swrLimit);
  };

  test("39 ohm: leave it, and drain the static", () => {
    const advice = advised(39, 0);
    expect(advice.choice.match.kind).toBe("none");
    expect(advice.isBandHeld).toBe(true);
    expect(advice.reason).toMatch(/No match is needed: SWR 1\.\d\d at its worst from 7 to 7\.2 MHz, limit 2/);
    expect(advice.notes.map((n) => n.code)).toEqual(["no-static-drain"]);
  });

  test("25 ohm: a coil across, which drains the static", () => {
    const advice = advised(22, 0);
    expect(advice.choice.match.kind).toBe("shunt-coil");
    expect(advice.notes.map((n) => n.code)).toEqual(["retrim"]);
    expect(advice.reason).toContain("Without a match the SWR reaches");
  });

  test("110 ohm: a quarter wave of 75 ohm line", () => {
    const advice = advised(110, 0);
    expect(advice.choice.match.kind).toBe("quarter-wave");
    expect(advice.choice.worstSwr).toBeLessThanOrEqual(2);
  });

  test("the limit decides: stricter asks for more, and too strict for the best there is", () => {
    expect(advised(39, 0, { swrLimit: 1.6 }).choice.match.kind).toBe("none");
    const strict = advised(39, 0, { swrLimit: 1.35 });
    expect(strict.choice.match.kind).not.toBe("none");
    expect(strict.choice.worstSwr).toBeLessThanOrEqual(1.35);
    const never = advised(39, 0, { swrLimit: 1.01 });
    expect(never.isBandHeld).toBe(false);
    expect(never.reason).toContain("Nothing here keeps SWR 1.01");
    const { matches } = okValue(designMatches(request(39, 0)));
    expect(never.choice.worstSwr).toBe(Math.min(...matches.map((m) => m.worstSwr)));
  });

  test("without matches there is nothing to recommend", () => {
    expect(() => recommendMatch([], 2)).toThrow(RangeError);
  });
});

describe("bad input is named", () => {
  test("fields and limits", () => {
    expect(where(request(39, 0))).toEqual([]);
    expect(where(request(39, 0, { wanted_ohm: 0 }))).toEqual(["wanted_ohm"]);
    expect(where(request(39, 0, { swrLimit: 1 }))).toEqual(["swrLimit"]);
    expect(where(request(39, 0, { coilQ: -200 }))).toEqual(["coilQ"]);
    expect(where(request(39, 0, { capacitorQ: 0 }))).toEqual(["capacitorQ"]);
    expect(where(request(39, 0, { power_W: 0 }))).toEqual(["power_W"]);
    expect(where(request(39, 0, { design_MHz: 7.21 }))).toEqual(["design_MHz"]);
    expect(where(request(39, 0, { design_MHz: 6.99 }))).toEqual(["design_MHz"]);
    expect(where(request(39, 0, { feed: [] }))).toEqual(["feed"]);
    expect(where(request(-5, 0, { feed: band(-5, Number.NaN).slice(0, 1), design_MHz: 7 }))).toEqual([
      "feed[0].impedance_ohm.re",
      "feed[0].impedance_ohm.im",
    ]);
    const [a, b] = band(39, 0);
    expect(where(request(39, 0, { feed: [b!, a!] }))).toEqual(["feed[1].frequency_MHz"]);
  });

  test("without a cable of the wanted impedance the matches along a line are refused, not the whole", () => {
    const { refused, matches } = okValue(designMatches(request(39, 0, { stock: [other] })));
    expect(refused.filter((r) => r.problem.where === "stock").map((r) => r.kind)).toEqual([
      "series-section",
      "twelfth-wave",
      "stub",
    ]);
    expect(matches.length).toBeGreaterThan(0);
  });
});
