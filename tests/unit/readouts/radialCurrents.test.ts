import { describe, expect, test } from "vitest";
import { loneVertical, readPlan, withGround, withRadials } from "../../../engine/index.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { okValue } from "../../support/okValue.ts";

const request = { azimuthCutElevation_deg: 8, pathElevation_deg: 8, rungs_deg: [8], rearSector_deg: 120 };
const few = withRadials(demoPlan, { count: 4, length_m: 3 });

describe("currents in radials", { timeout: 30_000 }, () => {
  test("even radials of a lone vertical share its base current evenly at the hub, and carry none at the tip", () => {
    const [field] = okValue(readPlan(loneVertical(few), request)).radialCurrents!;
    expect(field!.relative).toHaveLength(4);
    expect(field!.at_m[0]).toBe(0);
    expect(field!.at_m.at(-1)).toBeCloseTo(3, 12);
    for (const along of field!.relative) {
      expect(along).toHaveLength(field!.at_m.length);
      // Kirchhoff at the hub and symmetry, to the rounding of the solver.
      expect(along[0]).toBeCloseTo(1 / 4, 8);
      expect(along.at(-1)).toBe(0);
    }
  });

  test("each element of a pair has its own, and those of the reflector add up to its base current at least", () => {
    const { radialCurrents, baseCurrents } = okValue(readPlan(few, request));
    expect(radialCurrents!.map((field) => field.elementId)).toEqual(["driven", "reflector"]);
    const { re, im } = baseCurrents[1]!.current;
    const atHub = radialCurrents![1]!.relative.reduce((sum, along) => sum + along[0]!, 0);
    expect(atHub).toBeGreaterThanOrEqual(Math.hypot(re, im) * (1 - 1e-9));
    // Left and right of the beam are alike: the first radial and the last, the second and the third.
    for (const { relative } of radialCurrents!) {
      expect(relative[0]![0]).toBeCloseTo(relative[3]![0]!, 6);
      expect(relative[1]![0]).toBeCloseTo(relative[2]![0]!, 6);
    }
  });

  test("there are none in the preview, nor on a ground plane", () => {
    expect(okValue(readPlan({ ...few, soilModel: "screen" }, request)).radialCurrents).toBeUndefined();
    expect(okValue(readPlan(withGround(few, { kind: "perfect" }), request)).radialCurrents).toBeUndefined();
  });
});
