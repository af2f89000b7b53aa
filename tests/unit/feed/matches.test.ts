import { describe, expect, test } from "vitest";
import {
  defaultFeedline,
  drivenOf,
  lineOfCable,
  loneVertical,
  matchKey,
  type SavedPlan,
  sweepBandSmooth,
  swr,
  withGround,
} from "../../../engine/index.ts";
import { bandFeed } from "../../../src/rooms/feed/bandFeed.ts";
import { matchCurve, matchNamed, roomMatches } from "../../../src/rooms/feed/match/roomMatches.ts";
import { capacitanceText, inductanceText, sectionWords } from "../../../src/rooms/feed/match/sectionWords.ts";
import { recutDriven, recutFor } from "../../../src/rooms/feed/match/shortenDriven.ts";
import { spanWords } from "../../../src/rooms/feed/match/spanWords.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";
import { bandReadout, span } from "./sampleBand.ts";

const cable = (id: string) => okValue(lineOfCable({ kind: "listed", id }));
const feed = bandFeed(bandReadout, "driven", span, 7.1)!;
const matches = okValue(roomMatches(feed, defaultFeedline, cable("rg-213"), cable("rg-59b")));

describe("the room's matches", () => {
  test("each has a name of its own, and by it is found again for another feedpoint", () => {
    const keys = matches.candidates.map((one) => one.key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys[0]).toBe("none");
    const elsewhere = bandFeed(bandReadout, "driven", span, 7.12)!;
    const others = okValue(roomMatches(elsewhere, defaultFeedline, cable("rg-213"), cable("rg-59b")));
    for (const key of ["shunt-coil/shunt-coil", "stub/line.rg-213.1/open.rg-213", "stub/line.rg-213.1/open.rg-213#2"])
      expect(matchNamed(others, key)?.readout.match.kind).toBe(matchNamed(matches, key)!.readout.match.kind);
    expect(matchNamed(matches, "l-network/wet-string")).toBeUndefined();
    expect(matchNamed(matches, undefined)).toBeUndefined();
    const all = matches.candidates.map((one) => one.readout.match);
    expect(matchKey(all[3]!, all)).toBe(keys[3]);
  });
  test("the recommended one is among them and holds the band, where any does", () => {
    const advised = matchNamed(matches, matches.adviceKey)!;
    expect(advised.readout).toBe(matches.advice.choice);
    expect(matches.advice.isBandHeld).toBe(matches.candidates.some((one) => one.readout.isBandHeld));
    expect(matches.networks).toHaveLength(8);
  });
  test("the curve is the match put back at every point drawn: without one, the antenna's own SWR", () => {
    const { frequency_MHz, value } = matchCurve(matches.candidates[0]!, matches, feed);
    expect(frequency_MHz.length).toBeGreaterThanOrEqual(feed.drawn.length);
    for (const [i, f] of frequency_MHz.entries()) {
      const z = feed.at(f);
      expect(value[i]).toBeCloseTo(swr(z.re, z.im, 50), 6);
    }
  });
  test("a cable of one impedance for all leaves out what needs two", () => {
    const same = okValue(roomMatches(feed, defaultFeedline, cable("rg-213"), cable("rg-213")));
    expect(same.refused.length + same.candidates.length).toBeGreaterThan(5);
    expect(same.candidates.map((one) => one.key).join()).not.toContain("rg-59b");
  });
});

describe("shorten the driven to suit", () => {
  const plan: SavedPlan = withGround({ ...loneVertical(demoPlan), band: demoPlan.band! }, { kind: "perfect" });
  const roomOf = (p: SavedPlan) => {
    const f = p.frequency_MHz;
    const band = okValue(sweepBandSmooth(p, { from_MHz: f * 0.98, to_MHz: f * 1.02, points: 17 }));
    const own = bandFeed(band, drivenOf(p)!.id, { from_MHz: f * 0.99, to_MHz: f * 1.01, label: "" }, f)!;
    const room = okValue(roomMatches(own, defaultFeedline, cable("rg-213"), cable("rg-59b")));
    return { own, coil: matchNamed(room, "shunt-coil/shunt-coil")! };
  };
  test("an edit that, solved again, leaves the coil nothing to ask for: two cuts come within 0.3 ohm", () => {
    const first = roomOf(plan);
    const cut = recutFor(first.coil.readout.match, plan, first.own.swept, plan.frequency_MHz)!;
    expect(cut.to_m).toBeLessThan(cut.from_m);
    const once = recutDriven(plan, cut);
    expect(drivenOf(once)!.height_m).toBe(cut.to_m);
    const second = roomOf(once);
    const wanted = (coil: typeof first.coil) => {
      const part = coil.readout.match.ladder.find((one) => one.kind === "retrim");
      return part?.kind === "retrim" ? Math.abs(part.reactance_ohm) : 0;
    };
    expect(wanted(second.coil)).toBeLessThan(0.15 * wanted(first.coil));
    const again = recutFor(second.coil.readout.match, once, second.own.swept, plan.frequency_MHz);
    const twice = again ? recutDriven(once, again) : once;
    expect(wanted(roomOf(twice).coil)).toBeLessThan(0.3);
  });
  test("nothing is offered for a match that leaves the element alone", () => {
    const { own } = roomOf(plan);
    expect(recutFor(matches.candidates[0]!.readout.match, plan, own.swept, plan.frequency_MHz)).toBeNull();
  });
});

test("parts as they are bought, in the person's units", () => {
  const line = { ...aLine(75), name: "RG-59B/U, 6 mm" };
  expect(sectionWords({ kind: "series-coil", inductance_uH: 0.1234 }, "metric")).toBe("0.123 µH in series");
  expect(sectionWords({ kind: "shunt-coil", inductance_uH: 1.234 }, "metric")).toBe("1.23 µH across");
  expect(sectionWords({ kind: "series-capacitor", capacitance_pF: 945.4 }, "metric")).toBe("945 pF in series");
  expect(sectionWords({ kind: "shunt-capacitor", capacitance_pF: 6.66 }, "metric")).toBe("6.7 pF across");
  expect(sectionWords({ kind: "line", line, length_m: 3.048, parallel: 2 }, "metric")).toBe(
    "twice 3.048 m of RG-59B/U in parallel",
  );
  expect(sectionWords({ kind: "line", line, length_m: 3.048, parallel: 1 }, "imperial")).toBe("10 ft of RG-59B/U");
  expect(sectionWords({ kind: "stub", end: "shorted", line, length_m: 1.5 }, "metric")).toBe(
    "shorted stub, 1.50 m of RG-59B/U",
  );
  expect(sectionWords({ kind: "retrim", reactance_ohm: -16.6 }, "metric")).toBe("element recut by −16.6 Ω");
  expect([inductanceText(12.34), capacitanceText(1000)]).toEqual(["12.3 µH", "1000 pF"]);
  const some = { from_MHz: 7, to_MHz: 7.1, width_kHz: 100, openBelow: false, openAbove: false };
  expect([spanWords(some), spanWords({ ...some, openAbove: true }), spanWords(undefined)]).toEqual([
    "100 kHz",
    "over 100 kHz",
    "none",
  ]);
});
