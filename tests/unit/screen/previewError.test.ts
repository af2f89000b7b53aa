import { describe, expect, test } from "vitest";
import { type Plan, previewError, solvePlan, withGround, withRadials, withSpacing } from "../../../engine/index.ts";
import table from "../../../engine/screen/previewErrors.json" with { type: "json" };
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { okValue } from "../../support/okValue.ts";

const wavelength = 299.792458 / 7.1;
/** The table's own vertical, 7.1 MHz over average soil. */
function vertical(count: number, length_wl: number, height_m: number): Plan {
  const [element] = demoPlan.elements;
  const soil = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
  const radials = { count, length_m: length_wl * wavelength, height_m, diameter_mm: 1.6 };
  const lone = { ...element!, forward_m: 0, left_m: 0, height_m: 0.242 * wavelength, diameter_mm: 4, radials };
  return { ...withGround(demoPlan, soil), frequency_MHz: 7.1, elements: [lone] };
}

describe("what the preview is expected to be off by", { timeout: 60_000 }, () => {
  test.each([
    [8, 0.25, 0],
    [32, 0.125, -0.05],
  ])("at a place of the table it is what the two models differ by: %d radials of %d wavelength at %d m", (n, l, h) => {
    const plan = vertical(n, l, h);
    const error = previewError(plan)!;
    const [full, rough] = (["full-wave", "screen"] as const).map((soilModel) =>
      okValue(solvePlan({ ...plan, soilModel })),
    );
    const z = [full, rough].map((one) => one!.feeds[0]!.impedance_ohm);
    expect(error.resistance_ohm).toBeCloseTo(Math.abs(z[0]!.re - z[1]!.re), 0);
    expect(error.reactance_ohm).toBeCloseTo(Math.abs(z[0]!.im - z[1]!.im), 0);
    expect(error.gain_dB).toBeCloseTo(Math.abs(full!.gain_dBi(5, 0) - rough!.gain_dBi(5, 0)), 1);
    expect(error.frontToBack_dB).toBeUndefined();
  });

  test("between places the worst of them counts, and a pair has front-to-back as well", () => {
    const at = (count: number) => previewError(vertical(count, 0.25, 0))!.resistance_ohm;
    expect(at(12)).toBe(Math.max(at(8), at(16)));
    expect(previewError(withSpacing(demoPlan, 6))!.frontToBack_dB).toBeGreaterThan(0);
  });

  test("nothing where the preview is exact, or knows nothing", () => {
    expect(previewError(withGround(demoPlan, { kind: "perfect" }))).toBeNull();
    expect(previewError(withRadials(demoPlan, { count: 0 }))).toBeNull();
    expect(previewError(withRadials(demoPlan, { height_m: 1 }))).toBeNull();
  });

  test("the table is whole: a row for every place, three figures each, four for pairs", () => {
    const places = [table.soil, table.frequency_MHz, table.height_m, table.count, table.length_wl];
    const size = places.reduce((product, list) => product * list.length, 1);
    expect(table.single).toHaveLength(size);
    expect(table.pair).toHaveLength(size);
    expect(table.single.every((row) => row?.length === 3)).toBe(true);
    // Pairs with more than sixteen wavelengths of radial wire in a field are left out.
    expect(table.pair.filter((row) => row === null).length / size).toBeLessThan(0.15);
    expect(table.pair.every((row) => row === null || row.length === 4)).toBe(true);
  });
});
