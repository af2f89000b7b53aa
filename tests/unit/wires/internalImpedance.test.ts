import { describe, expect, test } from "vitest";
import { MU0_HPerM } from "../../../engine/constants.ts";
import { internalImpedance } from "../../../engine/wires/internalImpedance.ts";

const COPPER_SPerM = 5.8e7;

describe("internalImpedance", () => {
  test("direct current: resistance of the section, internal inductance μ₀/8π", () => {
    const a = 1e-3;
    const dc = 1 / (Math.PI * a * a * COPPER_SPerM);
    expect(internalImpedance(0, a, COPPER_SPerM)).toEqual({ re: dc, im: 0 });
    const slow = internalImpedance(1, a, COPPER_SPerM);
    expect(slow.re / dc).toBeCloseTo(1, 6);
    expect(slow.im / (2 * Math.PI * (MU0_HPerM / (8 * Math.PI)))).toBeCloseTo(1, 6);
  });

  test("high frequency: a strip 2πa wide and one skin depth thick, resistance and reactance alike", () => {
    const [f, a] = [7.1e6, 12.5e-3];
    const delta = 1 / Math.sqrt(Math.PI * f * MU0_HPerM * COPPER_SPerM);
    const strip = 1 / (2 * Math.PI * a * delta * COPPER_SPerM);
    const z = internalImpedance(f, a, COPPER_SPerM);
    // R = strip (1 + δ/2a + …), X = strip (1 − O(δ²/a²)); δ/2a is 1e-3 here.
    expect(z.re / strip - 1).toBeCloseTo(delta / (2 * a), 5);
    expect(z.im / strip - 1).toBeCloseTo(0, 5);
  });

  test("a wire without section or conductivity is the caller's mistake", () => {
    expect(() => internalImpedance(7e6, 0, COPPER_SPerM)).toThrow(RangeError);
    expect(() => internalImpedance(7e6, 1e-3, 0)).toThrow(RangeError);
    expect(() => internalImpedance(7e6, Number.NaN, COPPER_SPerM)).toThrow(RangeError);
  });
});
