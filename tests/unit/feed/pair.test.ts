import { describe, expect, test } from "vitest";
import {
  defaultFeedline,
  fedImpedances,
  lineOfCable,
  type Part,
  readPlan,
  solveNetwork,
  swr,
  withGround,
} from "../../../engine/index.ts";
import { matrixFrequencies, matrixOver } from "../../../src/rooms/feed/pair/bandMatrix.ts";
import { harnesses } from "../../../src/rooms/feed/pair/harnesses.ts";
import { pairPlans, polar, withCurrents } from "../../../src/rooms/feed/pair/pairPlans.ts";
import { type PairAsk, type PairRow, pairState } from "../../../src/rooms/feed/pair/pairState.ts";
import { pairVerdict } from "../../../src/rooms/feed/pair/pairVerdict.ts";
import { partWords } from "../../../src/rooms/feed/pair/partWords.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import { answerRequest } from "../../../src/worker/answerRequest.ts";
import type { EngineAnswer, EngineAsk } from "../../../src/worker/EngineMessage.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";

const plan = withGround(demoPlan, { kind: "perfect" });
const f = plan.frequency_MHz;
const plans = pairPlans(plan, false)!;
const cable = okValue(lineOfCable({ kind: "listed", id: "rg-59b" }));
const ask: PairAsk = {
  plans,
  ratio: { magnitude: 1, phase_deg: 90 },
  feedline: defaultFeedline,
  line: okValue(lineOfCable(defaultFeedline.cable)),
  cable,
  span: { from_MHz: 10.1, to_MHz: 10.15, label: "30 m" },
  request: readoutRequest(plan),
};
const known = new Map<string, EngineAnswer>();
const know = (question: EngineAsk) => known.get(JSON.stringify(question));

/** Answers what is asked until nothing more comes up, as the page's worker does. */
function settle(of: PairAsk) {
  for (let round = 0; round < 60; round++) {
    const state = pairState(of, know);
    const next = state.asks.find((one) => !know(one));
    if (!next) return state;
    const reply = answerRequest({ id: 0, ask: next });
    if (!("answer" in reply)) throw new Error(JSON.stringify(reply));
    known.set(JSON.stringify(next), reply.answer);
  }
  throw new Error("asks without end");
}
const rows = settle(ask).result!;
const row = (id: PairRow["id"], of = rows) => of.find((one) => one.id === id)!;

describe("plans of a pair", () => {
  test("both as the driven is, at the reflector's place, or as drawn", () => {
    const [front, back] = plans.fed.elements;
    expect([back!.height_m, back!.forward_m, back!.id]).toEqual([front!.height_m, -5.9, "reflector"]);
    expect(pairPlans(plan, true)!.fed.elements[1]!.height_m).toBe(7.6);
    expect(plans.single.elements).toHaveLength(1);
    expect(plans.parasitic.elements[1]!.base.kind).toBe("joined");
    expect(pairPlans({ ...plan, elements: plan.elements.slice(0, 1) }, false)).toBeNull();
  });
  test("the phase offered is the one that cancels straight behind along the ground: either side is worse", () => {
    const behind_dB = (phase_deg: number) =>
      okValue(readPlan(withCurrents(plans.fed, polar(1, phase_deg)), { ...ask.request, pathElevation_deg: 0.5 })).path
        .frontToBack_dB;
    // Equal base currents are not quite equal fields: coupling shapes each element's current a little differently, so the
    // null has a floor (31 dB here) and is judged against its neighbours.
    const best = behind_dB(plans.nullPhase_deg);
    expect(best).toBeGreaterThan(behind_dB(plans.nullPhase_deg - 5) + 3);
    expect(best).toBeGreaterThan(behind_dB(plans.nullPhase_deg + 5) + 3);
  });
});

describe("the comparison", () => {
  test("asks for the quick things first and is not there before all is answered", () => {
    const first = pairState(ask, () => undefined);
    expect(first.result).toBeNull();
    expect(first.asks[0]!.kind).toBe("fed");
    expect(first.asks.filter((one) => one.kind === "readouts")).toHaveLength(3);
    const all = settle(ask).asks;
    const without = new Map(known);
    without.delete(JSON.stringify(all.at(-1)));
    expect(pairState(ask, (one) => without.get(JSON.stringify(one))).result).toBeNull();
  });
  test("one vertical, reflector and wanted currents are the engine's own answers", () => {
    expect(row("single").readout).toEqual(okValue(readPlan(plans.single, ask.request)));
    expect(row("parasitic").readout).toEqual(okValue(readPlan(plans.parasitic, ask.request)));
    expect(row("ideal").readout).toEqual(okValue(readPlan(withCurrents(plans.fed, polar(1, 90)), ask.request)));
    expect(row("ideal").gain_dBi).toBe(row("ideal").readout!.path.forward_dBi);
  });
  test("a harness is judged by the currents it really makes, and pays for its loss", () => {
    const z = okValue(fedImpedances(plans.fed, f)).impedance_ohm;
    for (const id of ["delay", "equal-voltage", "forcing", "lumped"] as const) {
      const { harness, readout, ratio, gain_dBi, input_ohm, curve } = row(id);
      const network = okValue(harness!.named.design).network;
      const solved = okValue(solveNetwork(network, z, f, 100));
      expect(solved.currentRatios[1]!.re).toBeCloseTo(ratio!.re, 9);
      expect(solved.currentRatios[1]!.im).toBeCloseTo(ratio!.im, 9);
      expect(readout).toEqual(okValue(readPlan(withCurrents(plans.fed, ratio!), ask.request)));
      expect(solved.loss_dB).toBeGreaterThan(0.05);
      expect(gain_dBi).toBeCloseTo(readout!.path.forward_dBi - solved.loss_dB, 9);
      expect(input_ohm!.re).toBeCloseTo(solved.inputImpedance_ohm.re, 9);
      expect(curve!.worst).toBeGreaterThanOrEqual(harness!.design.swr - 1e-6);
    }
    // What forces the currents forces them; what is cut by length alone does not.
    expect(Math.hypot(row("forcing").ratio!.re, row("forcing").ratio!.im - 1)).toBeLessThan(0.05);
    expect(Math.hypot(row("delay").ratio!.re, row("delay").ratio!.im - 1)).toBeGreaterThan(0.1);
  });
  test("single and reflector have the SWR of their own feedpoints over the band", () => {
    for (const id of ["single", "parasitic"] as const) {
      const { curve } = row(id);
      for (const i of [0, 24, 48]) {
        const z = okValue(fedImpedances(plans[id], curve!.frequency_MHz[i]!)).impedance_ohm[0]![0]!;
        expect(curve!.swr[i]).toBeCloseTo(swr(z.re, z.im, 50), 4);
      }
    }
  });
  test("what cannot be made stands in its row with the reason; an unsound plan brings its problems and no rows", () => {
    const inPhase = settle({ ...ask, ratio: { magnitude: 1, phase_deg: 0 } }).result!;
    expect(row("delay", inPhase).problem!.message).toMatch(/phase wanted is 0/);
    expect(row("delay", inPhase).readout).toBeNull();
    const bad = { ...plans, fed: { ...plans.fed, frequency_MHz: 99 } };
    const state = settle({ ...ask, plans: bad });
    expect([state.result, state.problems.length > 0]).toEqual([null, true]);
  });
});

describe("harnesses", () => {
  test.each([0.1, 0.2, 0.25, 0.35, 0.75])("lines reach from the tee to both bases at %f wavelengths", (apart) => {
    const spacing_m = (apart * 299.792458) / f;
    const moved = { ...plan, elements: plan.elements.map((e, i) => (i === 0 ? e : { ...e, forward_m: -spacing_m })) };
    const impedance_ohm = okValue(fedImpedances(pairPlans(moved, false)!.fed, f)).impedance_ohm;
    const made = harnesses({
      impedance_ohm,
      frequency_MHz: f,
      ratio: polar(1, 90),
      cable: aLine(75),
      spacing_m,
      coilQ: 200,
      capacitorQ: 1000,
    });
    let found = 0;
    for (const { design } of made) {
      if (!design.ok) continue;
      found++;
      const { parts } = design.value.network;
      const cables = parts.filter((part) => part.kind === "line" && part.id !== "delay line");
      expect(cables.reduce((sum, part) => sum + (part as Part & { kind: "line" }).length_m, 0)).toBeGreaterThan(
        spacing_m,
      );
      // Half a wave on both changes nothing where there is no loss: every exact one makes the wanted currents.
      const ratio = okValue(solveNetwork(design.value.network, impedance_ohm, f)).currentRatios[1]!;
      if (design.value.kind === "equal-voltage") {
        expect(ratio.re).toBeCloseTo(0, 6);
        expect(ratio.im).toBeCloseTo(1, 6);
      }
    }
    expect(found).toBeGreaterThan(2);
  });
  test("parts in words", () => {
    const line = aLine(75);
    expect(
      partWords(
        [
          { id: "line 1", kind: "line", from: "a", to: "b", line, length_m: 4.5 },
          { id: "x", kind: "coil", from: "a", to: "b", inductance_uH: 1.5 },
          { id: "y", kind: "capacitor", from: "a", to: "ground", capacitance_pF: 120 },
          { id: "link", kind: "contact", from: "a", to: "b", closed: true },
        ],
        "metric",
      ),
    ).toEqual(["line 1: 4.50 m", "1.50 µH in series", "120 pF across"]);
  });
});

test("a matrix over a band: exact where solved, within 0.01 ohm between, the design frequency always solved", () => {
  const at = matrixFrequencies(10.1, 10.15, f);
  expect(at).toContain(f);
  expect([at[0], at.at(-1)]).toEqual([10.1, 10.15]);
  expect(matrixFrequencies(10.1, 10.15, 10.2).at(-1)).toBe(10.2);
  const solve = (x: number) => ({
    frequency_MHz: x,
    impedance_ohm: okValue(fedImpedances(plans.fed, x)).impedance_ohm,
  });
  // Ten per cent of the frequency, as on the widest band.
  const solved = matrixFrequencies(9.6, 10.6, f).map(solve);
  expect(matrixOver(solved, [f])[0]!.impedance_ohm[0]![1]!.re).toBeCloseTo(solve(f).impedance_ohm[0]![1]!.re, 12);
  const between = 9.75;
  const [guessed] = matrixOver(solved, [between]);
  for (const i of [0, 1])
    for (const j of [0, 1]) {
      const own = solve(between).impedance_ohm[i]![j]!;
      const got = guessed!.impedance_ohm[i]![j]!;
      expect(Math.hypot(own.re - got.re, own.im - got.im)).toBeLessThan(0.01);
    }
});

describe("the verdict", () => {
  const like = (id: PairRow["id"], gain: number, worst: number): PairRow => ({
    ...row(id),
    gain_dBi: gain,
    readout: {
      ...row("single").readout!,
      path: { ...row("single").readout!.path, frontToRear_dB: worst, frontToBack_dB: worst },
    },
  });
  const said = (gain: number, worst: number) =>
    pairVerdict(
      [like("single", 0, 0), like("parasitic", 3, 10), like("ideal", 3.5, 20), like("forcing", gain, worst)],
      8,
    ).headline;
  test.each([
    [3.2, 12, /^Hardly worth it/],
    [3.2, 17, /buys something: \+0\.2 dB ahead, 7\.0 dB quieter behind/],
    [4.2, 11, /buys something: \+1\.2/],
    [1.5, 18, /^A trade/],
    [1.5, 12, /^Not worth it/],
    [3.1, 9, /^Hardly worth it.* 1\.0 dB louder behind/],
  ])("harness %f dB ahead, %f dB behind", (gain, worst, words) => {
    expect(said(gain, worst)).toMatch(words);
  });
  test("names the quietest harness and every figure against one vertical", () => {
    const verdict = pairVerdict(rows, 8);
    const best = rows
      .filter((one) => one.harness && one.readout)
      .sort((a, b) => b.readout!.path.frontToRear_dB - a.readout!.path.frontToRear_dB)[0]!;
    expect(verdict.best).toBe(best.id);
    const gained = row("parasitic").gain_dBi - row("single").gain_dBi;
    expect(verdict.said[0]).toContain(`+${gained.toFixed(1)} dB ahead`);
    expect(
      pairVerdict(
        rows.filter((one) => !one.harness),
        8,
      ).best,
    ).toBeNull();
  });
});
