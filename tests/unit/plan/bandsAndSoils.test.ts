import { describe, expect, test } from "vitest";
import { amateurBands, bandAt, checkPlan, soilOf, soils } from "../../../engine/index.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";

describe("amateur bands", () => {
  test("edges belong to the band; what is beside it does not", () => {
    expect(bandAt(7, 1)?.label).toBe("40 m");
    expect(bandAt(7.2, 1)?.label).toBe("40 m");
    expect(bandAt(7.2001, 1)).toBeUndefined();
    expect(bandAt(7.2001, 2)?.to_MHz).toBe(7.3);
    expect(bandAt(6.9999, 3)).toBeUndefined();
  });
  test("each region has eleven, in order and apart", () => {
    for (const region of [1, 2, 3] as const) {
      const bands = amateurBands.filter((band) => band.ituRegion === region);
      expect(bands).toHaveLength(11);
      bands.reduce((last, band) => {
        expect(band.from_MHz).toBeGreaterThan(last);
        expect(band.to_MHz).toBeGreaterThan(band.from_MHz);
        return band.to_MHz;
      }, 0);
    }
  });
  test("every source says that national rules govern", () => {
    for (const band of amateurBands) expect(band.source).toContain("national rules govern");
  });
});

describe("soils", () => {
  test("each has its own id and constants that a plan may have", () => {
    expect(new Set(soils.map((soil) => soil.id)).size).toBe(soils.length);
    for (const { relativePermittivity, conductivity_SPerM, id } of soils) {
      const ground = { kind: "soil" as const, relativePermittivity, conductivity_SPerM };
      expect(checkPlan({ ...twoElements, ground }).ok).toBe(true);
      expect(soilOf(ground)?.id).toBe(id);
    }
  });
  test("figures of no class, and no soil", () => {
    expect(soilOf({ kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.0051 })).toBeUndefined();
    expect(soilOf({ kind: "perfect" })).toBeUndefined();
  });
  test("the average soil that most published work uses: 13 and 0.005 S/m (common practice)", () => {
    expect(soilOf(twoElements.ground)?.id).toBe("average");
  });
});
