import { describe, expect, test } from "vitest";
import { type ReversalRequest, relayStates, reversalLoads } from "../../../engine/index.ts";
import practice from "../../fixtures/network/practice.json" with { type: "json" };
import { aLine } from "../../support/aLine.ts";
import { excess } from "../../support/excess.ts";
import { okValue } from "../../support/okValue.ts";
import { rowsOf } from "../../support/rowsOf.ts";

const request = (reactance_ohm: number, more: Partial<ReversalRequest> = {}): ReversalRequest => ({
  reactance_ohm,
  design_MHz: 7.1,
  band_MHz: [7, 7.1, 7.2],
  stub: aLine(50),
  ...more,
});

describe("loads for the base behind", () => {
  test("coil and stub as the trade quotes them", () => {
    const [coils, stubs] = rowsOf(practice, "reversal-coil", "reversal-stub");
    const both = [25, 28].map((x) => okValue(reversalLoads(request(x))));
    expect(
      excess(
        coils!,
        both.map(([coil]) => coil!.inductance_uH!),
      ),
    ).toBeLessThanOrEqual(1);
    expect(
      excess(
        stubs!,
        both.map(([, stub]) => stub!.length_m!),
      ),
    ).toBeLessThanOrEqual(1);
    expect(both[0]!.map((l) => l.kind)).toEqual(["coil", "shorted stub"]);
  });

  test("each has the reactance wanted at the design frequency, and its own slope over the band", () => {
    for (const x of [27, -40, 180]) {
      const loads = okValue(reversalLoads(request(x)));
      for (const load of loads) {
        expect(load.design_ohm.im).toBeCloseTo(x, 9);
        expect(load.design_ohm.re).toBeCloseTo(0, 9);
        expect(load.band_ohm[1]).toEqual(load.design_ohm);
      }
      const [part, stub] = loads;
      expect(part!.band_ohm[2]!.im).toBeCloseTo(x > 0 ? (x * 7.2) / 7.1 : (x * 7.1) / 7.2, 9);
      // X = Z₀ tan or −Z₀ cot of an angle that goes with frequency.
      const angle = x > 0 ? Math.atan(x / 50) : Math.atan(-50 / x);
      const at = (angle * 7.2) / 7.1;
      expect(stub!.band_ohm[2]!.im).toBeCloseTo(x > 0 ? 50 * Math.tan(at) : -50 / Math.tan(at), 9);
      expect(stub!.length_m!).toBeLessThan((0.66 * 299.792458) / 7.1 / 4);
    }
  });

  test("loss: Q of the parts, attenuation of the cable", () => {
    const lossy = aLine(50, 0.66, { loss: { root_dBPer100m: 1.4, linear_dBPer100m: 0 }, impedanceAngle: "real" });
    const [coil, stub] = okValue(reversalLoads(request(27, { coilQ: 200, stub: lossy })));
    expect(coil!.design_ohm.re).toBeCloseTo(27 / 200, 12);
    // Short lossy stub: R = αl Z₀ (sec² βl), to first order in αl.
    const angle = Math.atan(27 / 50);
    const np = ((1.4 * Math.sqrt(7.1)) / 100 / 8.685889638) * stub!.length_m!;
    expect(stub!.design_ohm.re).toBeCloseTo((50 * np) / Math.cos(angle) ** 2, 4);
    const [capacitor] = okValue(reversalLoads(request(-27, { capacitorQ: 1000 })));
    expect(capacitor!.kind).toBe("capacitor");
    expect(capacitor!.design_ohm.re).toBeCloseTo(27 / 1000, 4);
  });

  test("bad input", () => {
    const where = (r: ReversalRequest) => {
      const result = reversalLoads(r);
      return result.ok ? [] : result.problems.map((p) => p.where);
    };
    expect(where(request(0))).toEqual(["reactance_ohm"]);
    expect(where(request(Number.NaN))).toEqual(["reactance_ohm"]);
    expect(where(request(27, { coilQ: -1, capacitorQ: 0, design_MHz: 0, band_MHz: [7, -1] }))).toEqual([
      "design_MHz",
      "band_MHz[1]",
      "coilQ",
      "capacitorQ",
    ]);
  });
});

test("relay states: one base fed at most, the other's load in or open, never two contacts on one base", () => {
  const states = relayStates("a", "b", { re: 0.3, im: 27 });
  expect(states.map((s) => s.id)).toEqual(["forward", "reverse", "single", "grounded"]);
  for (const { elements, id } of states) {
    expect(elements.map((e) => e.elementId)).toEqual(["a", "b"]);
    expect(elements.filter((e) => e.contacts.feed)).toHaveLength(id === "grounded" ? 0 : 1);
    for (const { base, contacts } of elements) {
      expect(Object.values(contacts).filter(Boolean).length).toBeLessThanOrEqual(1);
      expect(base.kind).toBe(contacts.feed ? "fed" : contacts.load ? "loaded" : contacts.ground ? "joined" : "open");
    }
  }
  const [forward, reverse] = states;
  expect(forward!.elements[1]!.base).toEqual({ kind: "loaded", resistance_ohm: 0.3, reactance_ohm: 27 });
  expect(reverse!.elements[1]!.base).toEqual({ kind: "fed" });
  expect(reverse!.elements[0]!.contacts).toEqual({ feed: false, load: true, ground: false });
});
