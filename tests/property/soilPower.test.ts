import { describe, expect, test, vi } from "vitest";
import { auditSoilPower, type Ground, type PortInput, type WireInput, type WireProblem } from "../../engine/index.ts";
import { okValue } from "../support/okValue.ts";
import { radialVertical } from "../support/radialVertical.ts";
import { ONE_VOLT } from "../support/uprights.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 60_000 });

/*
 * Input (from the impedance matrix and its kernel tables) against what leaves: upwards by the far field, downwards by the
 * spectrum of the currents, in wires and loads. Three roads that share nothing but the currents, and the balance holds on
 * any mesh, so meshes are coarse here. Limit 1e-4; seen below 1.1e-6 in every case.
 */
const LIMIT = 1e-4;
const soil = (relativePermittivity: number, conductivity_SPerM: number): Ground => ({
  kind: "soil",
  relativePermittivity,
  conductivity_SPerM,
});
const average = soil(13, 0.005);
const problem = (ground: Ground, wires: readonly WireInput[], ports: readonly PortInput[]): WireProblem => ({
  frequency_Hz: 7.1e6,
  soilModel: "full-wave",
  ground,
  wires,
  ports,
});
const straight = (from_m: WireInput["from_m"], to_m: WireInput["to_m"], ground: Ground, metal?: number) =>
  problem(
    ground,
    [{ id: "w", from_m, to_m, radius_m: 1e-3, segments: 16, ...(metal && { conductivity_SPerM: metal }) }],
    [{ id: "p", wire: "w", position: 0.5, termination: ONE_VOLT }],
  );
const audit = (p: WireProblem) => okValue(auditSoilPower(p));

describe("everything that goes in comes out somewhere", () => {
  test.each<[string, WireProblem]>([
    ["level dipole 4 m over average soil", straight([-10, 0, 4], [10, 0, 4], average)],
    ["the same over soil without loss", straight([-10, 0, 4], [10, 0, 4], soil(4, 0))],
    ["upright dipole over average soil", straight([0, 0, 1], [0, 0, 21], average)],
    ["upright dipole over sea", straight([0, 0, 1], [0, 0, 21], soil(81, 5))],
    ["sloping wire from 0.3 to 9 m", straight([0, 0, 0.3], [8, 3, 9], average)],
    ["sloping wire of poor metal", straight([1, 2, 2], [9, -5, 7], soil(5, 0.001), 1e5)],
  ])("%s", (_, p) => {
    const { balance, soilPower_W, inputPower_W } = audit(p);
    expect(soilPower_W).toBeGreaterThan(0.05 * inputPower_W);
    expect(Math.abs(balance - 1)).toBeLessThan(LIMIT);
  });

  test.each([
    [1, 2.6],
    [0.1, 2.6],
    [0.05, 2.6],
    [0.02, 1.6],
  ])("vertical on four radials %d m up, %d m long, with a lossy load", (hub_m, radial_m) => {
    const cuts = { uprightSegments: 8, radialSegments: 6 };
    const { wires, port } = radialVertical({ hub_m, upright_m: 10.5, radials: 4, radial_m, ...cuts });
    const load: PortInput = {
      id: "load",
      wire: "v radial 1",
      position: 0.5,
      termination: { kind: "load", impedance_ohm: { re: 60, im: 100 } },
    };
    const a = audit(problem(average, wires, [port, load]));
    expect(a.loadLoss_W).toBeGreaterThan(1e-3 * a.inputPower_W);
    expect(a.soilPower_W).toBeGreaterThan(0.5 * a.inputPower_W);
    expect(Math.abs(a.balance - 1)).toBeLessThan(LIMIT);
  });

  test("soil like air: a level dipole sends half of it down", () => {
    const a = audit(straight([-10, 0, 4], [10, 0, 4], soil(1, 0)));
    expect(Math.abs(a.balance - 1)).toBeLessThan(1e-7);
    expect(Math.abs(a.soilPower_W / a.inputPower_W - 0.5)).toBeLessThan(1e-7);
  });
});

describe("what cannot be audited is said", () => {
  const codes = (p: WireProblem) => {
    const r = auditSoilPower(p);
    return r.ok ? [] : r.problems.map((q) => q.code);
  };
  const level = straight([-10, 0, 4], [10, 0, 4], average);
  test("another ground, the preview, wires that are not sound", () => {
    expect(codes({ ...level, ground: { kind: "perfect" } })).toEqual(["audit-needs-full-wave"]);
    expect(codes({ ...level, soilModel: "screen" })).toEqual(["audit-needs-full-wave"]);
    expect(codes({ ...level, ports: [] })).toEqual(["no-ports"]);
  });
  test("a wire so wide and low that it would take all day", () => {
    expect(codes(straight([-20, 0, 0.004], [20, 0, 0.004], average))).toEqual(["audit-too-large"]);
  });
});
