import { expect, test } from "vitest";
import { bandTraces } from "../../../src/charts/bandTraces.ts";
import { mastLines } from "../../../src/charts/mastLines.ts";
import { rearWords } from "../../../src/charts/rearWords.ts";
import { sideFigures } from "../../../src/charts/sideFigures.ts";
import { sideWords } from "../../../src/charts/sideWords.ts";
import { worstBehind } from "../../../src/charts/worstBehind.ts";
import { sampleGain, sampleReadout } from "./sampleReadout.ts";

test("side figures are read off the azimuth cut; currents against the first fed element, + leading", () => {
  const side = sideFigures(sampleReadout(4));
  expect(side.behind_dBi).toBeCloseTo(sampleGain(8, 180, 4), 12);
  expect(side.abeam_dBi).toBeCloseTo(sampleGain(8, 90, 4), 12);
  expect(side.currents).toHaveLength(1);
  expect(side.currents[0]!.magnitude).toBeCloseTo(0.5, 12);
  // −0.3 + 0.4j: 180 − atan(4/3) = 126.87 degrees.
  expect(side.currents[0]!.phase_deg).toBeCloseTo(126.8699, 3);
});

test("abeam is the louder side, and a side without a figure does not hide the other", () => {
  const readout = sampleReadout();
  const gain_dBi = readout.azimuthCut.angle_deg.map((a) => (a === 90 ? -1 : a === -90 ? -2 : 0));
  const azimuthCut = { ...readout.azimuthCut, gain_dBi };
  expect(sideFigures({ ...readout, azimuthCut }).abeam_dBi).toBe(-1);
  const holed = { ...azimuthCut, gain_dBi: gain_dBi.map((g, i) => (azimuthCut.angle_deg[i] === 90 ? Number.NaN : g)) };
  expect(sideFigures({ ...readout, azimuthCut: holed }).abeam_dBi).toBe(-2);
});

test("side words: what becomes of 100 W, and who leads", () => {
  const said = sideWords(sideFigures(sampleReadout()), 8, (id) => id);
  expect(said).toContain("38 W leave as sky wave; 62 W warm soil and wire");
  expect(said).toContain("The reflector carries 0.50 of the fed element's current, 127° ahead of it");
  const lagging = sideFigures({
    ...sampleReadout(),
    baseCurrents: [
      { elementId: "driven", current: { re: 1, im: 0 } },
      { elementId: "reflector", current: { re: 0, im: -1 } },
    ],
  });
  expect(sideWords(lagging, 8, (id) => id)).toContain("90° behind it");
});

test("the worst direction behind: inside the sector only, its mirror image with it, nothing when there is nothing", () => {
  const cut = sampleReadout().azimuthCut;
  expect(worstBehind(cut, 120).map((w) => w.azimuth_deg)).toEqual([-120, 120]);
  expect(worstBehind(cut, 0).map((w) => Math.abs(w.azimuth_deg))).toEqual([180]);
  const leaning = { ...cut, gain_dBi: cut.angle_deg.map((a) => (a === 150 ? 3 : -9)) };
  expect(worstBehind(leaning, 120)).toEqual([{ azimuth_deg: 150, gain_dBi: 3 }]);
  expect(worstBehind(leaning, 40)).not.toContainEqual({ azimuth_deg: 150, gain_dBi: 3 });
  expect(worstBehind({ ...cut, gain_dBi: cut.gain_dBi.map(() => Number.NaN) }, 120)).toEqual([]);
});

test("rear words name true bearings and how far below the beam", () => {
  const readout = sampleReadout();
  const worst = worstBehind(readout.azimuthCut, 120);
  const below = (sampleGain(8, 0, 4) - sampleGain(8, 120, 4)).toFixed(1);
  expect(rearWords(readout, worst, 120, 62)).toBe(
    `Rear sector 120° wide: loudest toward 182° and 302°, ${below} dB below the beam.`,
  );
  expect(rearWords(null, [], 120, 62)).toContain("no figure yet");
});

test("masts: the fed one on the hub, the one behind to its left, heights in proportion", () => {
  const lines = mastLines(
    [
      { id: "d", forward_m: 2, base_m: 0, height_m: 10, isFed: true },
      { id: "r", forward_m: -6, base_m: 1, height_m: 11, isFed: false },
    ],
    [100, 200],
    24,
    90,
  );
  expect(lines[0]!.foot).toEqual([100, 200]);
  expect(lines[1]!.foot[0]).toBeCloseTo(100 - 16, 9);
  expect(lines[1]!.tip[1]).toBeCloseTo(200 - 24, 9);
  expect(lines[1]!.foot[1]).toBeCloseTo(198, 9);
  const far = mastLines(
    [
      { id: "d", forward_m: 0, base_m: 0, height_m: 10, isFed: true },
      { id: "r", forward_m: -90, base_m: 0, height_m: 10, isFed: false },
    ],
    [100, 200],
    24,
    90,
  );
  expect(far[1]!.foot[0]).toBeCloseTo(10, 9);
  expect(mastLines([], [0, 0], 24, 90)).toEqual([]);
});

test("one trace for each feedpoint, named after its element only where there are several", () => {
  const feed = (elementId: string) => ({ elementId, resistance_ohm: [50], reactance_ohm: [0], swr50: [1] });
  const design = {
    id: "live",
    name: "this design",
    role: "live" as const,
    style: 0,
    nameOf: (id: string) => `the ${id}`,
  };
  const one = bandTraces([{ ...design, band: { frequency_MHz: [7], feeds: [feed("a")] } }]);
  expect(one.map((t) => t.name)).toEqual(["this design"]);
  const two = bandTraces([{ ...design, band: { frequency_MHz: [7], feeds: [feed("a"), feed("b")] } }]);
  expect(two.map((t) => [t.name, t.feed])).toEqual([
    ["this design, the a", 0],
    ["this design, the b", 1],
  ]);
  expect(bandTraces([{ ...design, band: null }])).toEqual([]);
});
