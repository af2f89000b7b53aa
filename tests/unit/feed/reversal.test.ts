import { describe, expect, test } from "vitest";
import { defaultFeedline, lineOfCable, type PlanReadout, readPlan, withGround } from "../../../engine/index.ts";
import { pairPlans } from "../../../src/rooms/feed/pair/pairPlans.ts";
import { scoreOf, searchLoad } from "../../../src/rooms/feed/reversal/loadSearch.ts";
import { type ReversalAsk, reversalState, withBases } from "../../../src/rooms/feed/reversal/reversalState.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import { answerRequest } from "../../../src/worker/answerRequest.ts";
import type { EngineAnswer, EngineAsk } from "../../../src/worker/EngineMessage.ts";
import { okValue } from "../../support/okValue.ts";

const plan = withGround(demoPlan, { kind: "perfect" });
const plans = pairPlans(plan, false)!;
const ask: ReversalAsk = {
  plans,
  choice: { goal: "front-to-back", load: "part" },
  feedline: { ...defaultFeedline, power_W: 400 },
  cable: okValue(lineOfCable({ kind: "listed", id: "rg-59b" })),
  span: { from_MHz: 10.1, to_MHz: 10.15, label: "30 m" },
  request: readoutRequest(plan),
};
const known = new Map<string, EngineAnswer>();
function settle(of: ReversalAsk) {
  for (let round = 0; round < 80; round++) {
    const state = reversalState(of, (one) => known.get(JSON.stringify(one)));
    const next: EngineAsk | undefined = state.asks.find((one) => !known.has(JSON.stringify(one)));
    if (!next) return state;
    const reply = answerRequest({ id: 0, ask: next });
    if (!("answer" in reply)) throw new Error(JSON.stringify(reply));
    known.set(JSON.stringify(next), reply.answer);
  }
  throw new Error("asks without end");
}
const found = settle(ask).result!;
const loaded = (reactance_ohm: number, resistance_ohm = 0) =>
  okValue(
    readPlan(withBases(plans.fed, [{ kind: "fed" }, { kind: "loaded", resistance_ohm, reactance_ohm }]), ask.request),
  );

describe("the search for a load", () => {
  const like = (frontToBack_dB: number, re = 0): PlanReadout => {
    const one = found.best.readout;
    const [first, second] = one.baseCurrents;
    return {
      ...one,
      path: { ...one.path, frontToBack_dB },
      baseCurrents: [first!, { ...second!, current: { re, im: 0 } }],
    };
  };
  test("finds a peak to 1.25 ohm wherever it lies in its range", () => {
    for (const peak of [-22.3, 0.4, 37.9, 61.2, 88]) {
      const { best } = searchLoad("front-to-back", null, (x) => like(-Math.abs(x - peak)));
      expect(Math.abs(best!.reactance_ohm - peak)).toBeLessThan(1.25);
    }
  });
  test("or the load that makes the current wanted", () => {
    const { best } = searchLoad("as-now", { re: 0.5, im: 0 }, (x) => like(0, x / 100));
    expect(best!.reactance_ohm).toBe(50);
    expect(scoreOf(best!, "as-now", { re: 0.5, im: 0 })).toBeCloseTo(0, 12);
  });
  test("stops and claims nothing while a try is unanswered, but has asked for the whole row", () => {
    const wanted: number[] = [];
    const { best } = searchLoad("front-to-back", null, (x) => {
      wanted.push(x);
      return x === 15 ? null : like(-x);
    });
    expect(best).toBeNull();
    expect(wanted).toHaveLength(9);
  });
});

describe("a pair that is turned round", () => {
  test("no load a few ohm away does better, solved directly", () => {
    const best = loaded(found.best.reactance_ohm).path.frontToBack_dB;
    expect(found.best.readout.path.frontToBack_dB).toBe(best);
    for (let x = -30; x <= 90; x += 6) expect(loaded(x).path.frontToBack_dB).toBeLessThan(best + 0.15);
  });
  test("as the reflector now: the current behind is nearest to the present one's", () => {
    const now = okValue(readPlan(plans.parasitic, ask.request)).baseCurrents[1]!.current;
    const { best, present } = settle({ ...ask, choice: { goal: "as-now", load: "part" } }).result!;
    expect(present).toEqual(now);
    const apart = (readout: PlanReadout) => {
      const own = readout.baseCurrents[1]!.current;
      return Math.hypot(own.re - now.re, own.im - now.im);
    };
    for (const more of [-6, -3, 3, 6])
      expect(apart(loaded(best.reactance_ohm + more))).toBeGreaterThan(apart(best.readout));
  });
  test("each state is its own plan solved, the load's loss in it", () => {
    const [forward, reverse, single] = found.states;
    const { re, im } = found.load.design_ohm;
    expect(re).toBeGreaterThan(0);
    expect(forward!.readout).toEqual(loaded(im, re));
    expect(reverse!.readout.path.frontToBack_dB).toBeCloseTo(-forward!.readout.path.frontToBack_dB, 1);
    expect(single!.state.elements[1]!.base.kind).toBe("open");
    expect(Math.abs(single!.readout.path.frontToBack_dB)).toBeLessThan(1);
  });
  test("the network of contacts sees the feed impedance that the wires give, and carries the power", () => {
    for (const { readout, input_ohm, contacts, state, load } of found.states) {
      const z = readout.feeds[0]!.impedance_ohm;
      expect(input_ohm.re).toBeCloseTo(z.re, 6);
      expect(input_ohm.im).toBeCloseTo(z.im, 6);
      const fed = contacts.find((one) => one.id === (state.id === "reverse" ? "feed back" : "feed front"))!;
      const current = Math.sqrt(400 / z.re);
      expect(fed.current_Arms).toBeCloseTo(current, 6);
      expect(fed.voltage_Vpeak).toBeLessThan(1e-6);
      // The open contact to the radials beside it stands off the whole base voltage.
      const open = contacts.find((one) => one.id === fed.id.replace("feed", "ground"))!;
      expect(open.voltage_Vpeak).toBeCloseTo(Math.SQRT2 * current * Math.hypot(z.re, z.im), 5);
      expect(open.current_Arms).toBeLessThan(1e-9);
      // The load in use carries the unfed element's current.
      const unfed = readout.baseCurrents.find(
        (one) => one.elementId === (state.id === "reverse" ? "driven" : "reflector"),
      )!;
      const inUse = Math.max(...load.map((one) => one.current_Arms));
      expect(inUse).toBeCloseTo(current * Math.hypot(unfed.current.re, unfed.current.im), 5);
    }
  });
  test("a stub in place of the coil has its reactance, and stands in the network as a line shorted at its end", () => {
    const { load, states } = settle({ ...ask, choice: { goal: "front-to-back", load: "stub" } }).result!;
    expect(load.kind).toBe("shorted stub");
    expect(load.design_ohm.im).toBeCloseTo(found.best.reactance_ohm, 0);
    expect(states[0]!.load.map((one) => one.kind)).toEqual(["line", "line"]);
    const z = states[0]!.readout.feeds[0]!.impedance_ohm;
    expect(states[0]!.input_ohm.re).toBeCloseTo(z.re, 6);
  });
});
