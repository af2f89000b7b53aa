import { describe, expect, test } from "vitest";
import { arraySample, type Plan, readPlan, wavelength_m } from "../../../engine/index.ts";
import { patternCsv, sweepCsv } from "../../../src/rooms/bench/files/answerCsv.ts";
import { groundPoint } from "../../../src/rooms/bench/files/groundPoint.ts";
import { siteGeoJson } from "../../../src/rooms/bench/files/siteGeoJson.ts";
import { readCsv } from "../../../src/rooms/bench/log/readCsv.ts";
import { currentCheck } from "../../../src/rooms/bench/refit/currentCheck.ts";
import { withBench } from "../../../src/rooms/bench/useBenchEdit.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import { okValue } from "../../support/okValue.ts";

describe("a point of the ground on the map", () => {
  // Lengths of one degree of latitude and longitude on WGS 84 [km], as widely tabulated (from memory), to the metre.
  test.each([
    [0, 110.574, 111.32],
    [45, 111.132, 78.847],
    [60, 111.412, 55.8],
  ])("at %d° a degree is %d km north and %d km east", (latitude_deg, north_km, east_km) => {
    const there = groundPoint({ latitude_deg, longitude_deg: 7 }, 1, 1);
    expect(Math.abs(0.001 / (there.latitude_deg - latitude_deg) - north_km)).toBeLessThan(0.0006);
    expect(Math.abs(0.001 / (there.longitude_deg - 7) - east_km)).toBeLessThan(0.0006);
  });
});

describe("the site as GeoJSON", () => {
  const located = withBench(demoPlan, { location: { latitude_deg: 45, longitude_deg: 7 } });
  const map = JSON.parse(okValue(siteGeoJson(located))) as {
    type: string;
    features: { geometry: { type: string; coordinates: unknown }; properties: Record<string, unknown> }[];
  };
  const named = (name: string) => map.features.find((one) => one.properties.name === name)!;
  const metres = ([lon, lat]: readonly [number, number]) => [(lon - 7) * 78_846.8, (lat - 45) * 111_131.7] as const;
  test("longitude first; the reflector lies 5.9 m off, at the bearing behind the beam", () => {
    expect(map.type).toBe("FeatureCollection");
    expect(named("driven").geometry).toEqual({ type: "Point", coordinates: [7, 45] });
    const [east, north] = metres(named("reflector").geometry.coordinates as [number, number]);
    expect(Math.hypot(east, north)).toBeCloseTo(5.9, 3);
    expect(((Math.atan2(east, north) * 180) / Math.PI + 360) % 360).toBeCloseTo(242, 1);
  });
  test("every radial is there, 3.7 m long, and the beam's own line", () => {
    const radials = named("radials of the driven").geometry.coordinates as [number, number][][];
    expect(radials).toHaveLength(16);
    for (const [from, to] of radials) {
      const [a, b] = [metres(from!), metres(to!)];
      expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeCloseTo(3.7, 3);
    }
    expect(named("beam").properties.trueBearing_deg).toBe(62);
  });
  test("without a place, or at a pole, it is refused and says why", () => {
    const none = siteGeoJson(demoPlan);
    expect(none.ok ? "" : none.problems[0]!.message).toMatch(/latitude and longitude/);
    const pole = siteGeoJson(withBench(demoPlan, { location: { latitude_deg: -89, longitude_deg: 0 } }));
    expect(pole.ok ? "" : pole.problems[0]!.message).toMatch(/-89 degrees.*up to 85/);
  });
});

describe("pattern and sweep as tables", () => {
  const plan = { ...demoPlan, ground: { kind: "perfect" as const } };
  const readout = okValue(readPlan(plan, readoutRequest(plan)));
  const table = (text: string) => okValue(readCsv(text)).map((row) => row.cells);
  test("the pattern: what it is above, units in its heads, both cuts, forward as the readout has it", () => {
    const rows = table(patternCsv(plan, readout, "full-wave", "2026-05-31"));
    const [about] = rows;
    expect(about!.join()).toContain("Pattern: 30 m pair");
    const at = rows.findIndex((row) => row[0] === "cut");
    expect(rows[at]).toEqual([
      "cut",
      "elevation [deg]",
      "azimuth [deg]",
      "true bearing [deg]",
      "gain [dBi]",
      "relative [dB]",
    ]);
    const body = rows.slice(at + 1).map((row) => [row[0], ...row.slice(1).map(Number)] as [string, ...number[]]);
    expect(body.every((row) => row.slice(1).every((v) => Number.isFinite(v)))).toBe(true);
    const ahead = body.find((row) => row[0] === "azimuth" && row[2] === 0)!;
    expect(ahead[1]).toBe(8);
    expect(ahead[3]).toBe(62);
    expect(ahead[4]).toBeCloseTo(readout.path.forward_dBi, 6);
    const behind = body.find((row) => row[0] === "elevation" && row[2] === 180 && row[1] === 8)!;
    expect(behind[3]).toBe(242);
    expect(behind[4]).toBeCloseTo(readout.path.back_dBi, 6);
    expect(Math.max(...body.map((row) => row[5]!))).toBe(0);
  });
  test("the sweep: a line a frequency, R, X and SWR of each feed", () => {
    const band = {
      frequency_MHz: [10.1, 10.12],
      feeds: [{ elementId: "driven", resistance_ohm: [40, 41], reactance_ohm: [-2, 1], swr50: [1.26, 1.22] }],
    };
    const rows = table(sweepCsv(plan, band, "preview", "2026-05-31"));
    expect(rows.at(-2)).toEqual(["10.1", "40", "-2", "1.26"]);
    expect(rows.at(-3)![1]).toBe("driven R [ohm]");
  });
});

describe("front-to-back from base currents", () => {
  const f = 7.1;
  const wl = wavelength_m(f);
  const vertical = (id: string, forward_m: number, base: Plan["elements"][number]["base"], height_wl: number) => ({
    id,
    forward_m,
    left_m: 0,
    height_m: height_wl * wl,
    diameter_mm: 2,
    conductor: "perfect" as const,
    base,
    radials: { count: 0, length_m: 0, height_m: 0, diameter_mm: 2 },
  });
  const pair = (spacing_wl: number, height_wl = 0.2433): Plan => ({
    ...demoPlan,
    frequency_MHz: f,
    ground: { kind: "perfect" },
    elements: [
      vertical("a", 0, { kind: "fed" }, height_wl),
      vertical("b", -spacing_wl * wl, { kind: "joined" }, height_wl),
    ],
  });
  const sample = (plan: Plan, elevation_deg: number) =>
    okValue(
      arraySample({ plan, frequency_MHz: f, directions: { elevations_deg: [elevation_deg], azimuths_deg: [0, 180] } }),
    );
  test.each([
    [1, 90, 0.25, 10],
    [0.6, 110, 0.15, 25],
    [0.3, -40, 0.3, 5],
    [0.47, 127, 0.2, 20],
  ])("%d at %d°, %d wavelengths, %d° up: short like sources have it by hand", (ratio, phase, spacing, elevation) => {
    // |1 + r e^{j(φ − kd cos ψ)}| over |1 + r e^{j(φ + kd cos ψ)}|. The base of the other stands open; a wire as short as
    // a hundredth of a wavelength then carries next to nothing, and each field is the element's own.
    const kd = 2 * Math.PI * spacing * Math.cos((elevation * Math.PI) / 180);
    const size = (turn: number) => {
      const a = (phase * Math.PI) / 180 + turn;
      return Math.hypot(1 + ratio * Math.cos(a), ratio * Math.sin(a));
    };
    const expected = 20 * Math.log10(size(-kd) / size(kd));
    const found = currentCheck(sample(pair(spacing, 0.01), elevation), 0, 1, ratio, phase);
    expect(found.frontToBack_dB).toBeCloseTo(expected, 2);
    expect(found.aheadOverDriven_dB).toBeCloseTo(20 * Math.log10(size(-kd)), 2);
  });
  test("the currents that the engine itself finds give the engine's own front-to-back", () => {
    const plan = pair(0.2);
    const request = { pathElevation_deg: 15, azimuthCutElevation_deg: 15, rearSector_deg: 90, rungs_deg: [15] };
    const readout = okValue(readPlan(plan, request));
    const { re, im } = readout.baseCurrents[1]!.current;
    const found = currentCheck(sample(plan, 15), 0, 1, Math.hypot(re, im), (Math.atan2(im, re) * 180) / Math.PI);
    expect(found.frontToBack_dB).toBeCloseTo(readout.path.frontToBack_dB, 6);
  });
});
