import { describe, expect, test } from "vitest";
import { loneVertical, readPlan, withGround, withRadials } from "../../../engine/index.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { okValue } from "../../support/okValue.ts";

const request = { azimuthCutElevation_deg: 8, pathElevation_deg: 8, rungs_deg: [8], rearSector_deg: 120 };
const few = withRadials(demoPlan, { count: 4, length_m: 3 });

describe("currents in radials", { timeout: 30_000 }, () => {
  test("even radials of a lone vertical share its base current evenly at the hub, and carry none at the tip", () => {
    const radials = okValue(readPlan(loneVertical(few), request)).radialCurrents!;
    expect(radials).toHaveLength(4);
    for (const { kind, at_m, relative } of radials) {
      expect(kind).toBe("radial");
      expect(at_m[0]).toBe(0);
      expect(at_m.at(-1)).toBeCloseTo(3, 12);
      expect(relative).toHaveLength(at_m.length);
      // Kirchhoff at the hub and symmetry, to the rounding of the solver.
      expect(relative[0]).toBeCloseTo(1 / 4, 8);
      expect(relative.at(-1)).toBe(0);
    }
  });

  test("each element of a pair has its own, and those of the reflector add up to its base current at least", () => {
    const { radialCurrents, baseCurrents } = okValue(readPlan(few, request));
    const own = (id: string) =>
      radialCurrents!.filter((wire) => wire.elementId === id).map((wire) => wire.relative[0]!);
    expect(radialCurrents).toHaveLength(8);
    const { re, im } = baseCurrents[1]!.current;
    const atHub = own("reflector").reduce((sum, one) => sum + one, 0);
    expect(atHub).toBeGreaterThanOrEqual(Math.hypot(re, im) * (1 - 1e-9));
    // Left and right of the beam are alike: the first radial and the last, the second and the third.
    for (const id of ["driven", "reflector"]) {
      const [first, second, third, fourth] = own(id);
      expect(first).toBeCloseTo(fourth!, 6);
      expect(second).toBeCloseTo(third!, 6);
    }
  });

  test("there are none in the preview, nor on a ground plane", () => {
    expect(okValue(readPlan({ ...few, soilModel: "screen" }, request)).radialCurrents).toBeUndefined();
    expect(okValue(readPlan(withGround(few, { kind: "perfect" }), request)).radialCurrents).toBeUndefined();
  });
});
