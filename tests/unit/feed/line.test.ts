import { describe, expect, test } from "vitest";
import { lineOfCable, lineReadout, lineTypes, swr } from "../../../engine/index.ts";
import { readCurve } from "../../../src/charts/Curve.ts";
import { bandFeed } from "../../../src/rooms/feed/bandFeed.ts";
import { cableName, shortCable } from "../../../src/rooms/feed/line/cableName.ts";
import { lineOver } from "../../../src/rooms/feed/line/lineOver.ts";
import { lineWords } from "../../../src/rooms/feed/line/lineWords.ts";
import { topFor } from "../../../src/rooms/feed/topFor.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";
import { bandReadout, span } from "./sampleBand.ts";

const feed = bandFeed(bandReadout, "driven", span, 7.1)!;
const lossy = okValue(lineOfCable({ kind: "listed", id: "rg-58c" }));

describe("the feed impedance the room works with", () => {
  test("holds the band's edges and the plan's frequency, and goes smoothly through the sweep", () => {
    const judged = feed.judged.map((p) => p.frequency_MHz);
    expect([judged[0], judged.at(-1)]).toEqual([7, 7.2]);
    expect(judged).toContain(7.1);
    // R = 30 + 100 (f − 7), X = 300 (f − 7.1): a cubic through four points is exact on both.
    for (const { frequency_MHz: f, impedance_ohm: z } of [...feed.judged, ...feed.drawn]) {
      expect(z.re).toBeCloseTo(30 + 100 * (f - 7), 9);
      expect(z.im).toBeCloseTo(300 * (f - 7.1), 9);
    }
    expect(feed.drawn[0]!.frequency_MHz).toBeCloseTo(6.96, 12);
    expect(feed.drawn.at(-1)!.frequency_MHz).toBeCloseTo(7.24, 12);
  });
  test("a plan for a frequency outside its band is judged from there on", () => {
    const judged = bandFeed(bandReadout, "driven", span, 6.98)!.judged;
    expect(judged[0]!.frequency_MHz).toBe(6.98);
  });
  test("is not there while the sweep is of another band, of another element, or missing", () => {
    expect(bandFeed(bandReadout, "driven", { ...span, from_MHz: 6.9 }, 7.1)).toBeNull();
    expect(bandFeed(bandReadout, "driven", span, 7.3)).toBeNull();
    expect(bandFeed(bandReadout, "driven", span, 6.95)).toBeNull();
    expect(bandFeed(bandReadout, "other", span, 7.1)).toBeNull();
    expect(bandFeed(null, "driven", span, 7.1)).toBeNull();
  });
});

describe("line behind the antenna", () => {
  test("without a match it is the engine's own line; the meter's 50 ohm stay 50 whatever the cable", () => {
    const cable75 = okValue(lineOfCable({ kind: "listed", id: "rg-59b" }));
    const [point] = okValue(lineOver(cable75, 13, [{ frequency_MHz: 7, impedance_ohm: { re: 40, im: 12 } }]));
    const own = okValue(lineReadout(cable75, 13, 7, { re: 40, im: 12 }));
    expect(point!.rig).toEqual(own.rigImpedance_ohm);
    expect(point!.swrOnLine).toBe(own.swrAtAntenna);
    expect(point!.swrAtRig).toBe(swr(own.rigImpedance_ohm.re, own.rigImpedance_ohm.im, 50));
    expect(point!.swrAtRig).not.toBeCloseTo(own.swrAtRig, 2);
    expect(point!.efficiency).toBeCloseTo(own.efficiency, 12);
  });
  test("a match stands between antenna and line, and its loss counts", () => {
    const antenna = [{ frequency_MHz: 7, impedance_ohm: { re: 50, im: -80 } }];
    const inductance_uH = 80 / (2 * Math.PI * 7);
    const [point] = okValue(lineOver(lossy, 30, antenna, [{ kind: "series-coil", inductance_uH, q: 100 }]));
    // ωL/Q = 0.8 ohm in series with 50.
    expect(point!.lineEnd.re).toBeCloseTo(50.8, 9);
    expect(point!.matchLoss_dB).toBeCloseTo(10 * Math.log10(50.8 / 50), 9);
    expect(point!.antenna).toEqual(antenna[0]!.impedance_ohm);
    expect(-10 * Math.log10(point!.efficiency)).toBeCloseTo(point!.matchLoss_dB + point!.lineLoss_dB, 9);
  });
  test("an antenna that takes no power is said, not drawn", () => {
    const result = lineOver(lossy, 30, [{ frequency_MHz: 7, impedance_ohm: { re: -2, im: 0 } }]);
    expect(result.ok ? "" : result.problems[0]!.message).toMatch(/resistance/);
  });
});

describe("what the meter hides, in words", () => {
  const words = (line: typeof lossy, length_m: number, re: number, im = 0) =>
    lineWords(
      okValue(lineOver(line, length_m, [{ frequency_MHz: 7, impedance_ohm: { re, im } }]))[0]!,
      line.impedance_ohm,
    ).join(" ");
  test("flatters through a lossy cable, with both figures and the loss each way", () => {
    const said = words(lossy, 60, 200);
    expect(said).toMatch(/rig shows SWR 2\.\d\d, and at the far end it is [34]\.\d\d\. The meter flatters/);
    expect(said).toMatch(/of 100 W at the rig \d\d W reach/);
  });
  test("tells the truth through a short or lossless one", () => {
    expect(words(aLine(50), 20, 100)).toContain("SWR 2.00: what it is at the far end");
    expect(words(aLine(50), 20, 100)).not.toContain("flatters");
  });
  test("warns of a cable that is not 50 ohm", () => {
    expect(words(aLine(75), 10, 50)).toContain("depends on its length");
  });
});

test("names, scale and reading", () => {
  for (const { id, name } of lineTypes) expect(cableName({ kind: "listed", id })).toBe(name);
  expect(shortCable("RG-213/U, 10 mm, solid")).toBe("RG-213/U");
  const curve = {
    id: "c",
    name: "c",
    role: "live",
    style: 0,
    frequency_MHz: [7, 7.1, 7.2],
    value: [1, 2.9, 9],
  } as const;
  expect(readCurve(curve, 7.05)).toBeCloseTo(1.95, 12);
  expect(readCurve(curve, 7.2)).toBe(9);
  expect(readCurve(curve, 7.21)).toBeNaN();
  expect(readCurve(curve, 6.99)).toBeNaN();
  expect(topFor([curve], { from_MHz: 7, to_MHz: 7.1 })).toBe(3);
  expect(topFor([curve], { from_MHz: 7, to_MHz: 7.13 })).toBe(5);
  expect(topFor([curve], { from_MHz: 7, to_MHz: 7.2 })).toBe(10);
});
