import { describe, expect, test } from "vitest";
import { resonantHeight_m, wavelength_m } from "../../../engine/index.ts";
import { resonantHeights, resonantMonopoles } from "../../fixtures/plan/resonantMonopoles.ts";

describe("resonantHeight_m keeps to the accuracy its description states", () => {
  test.each(resonantMonopoles)("height/diameter $heightOverDiameter", ({ heightOverDiameter, height_wl }) => {
    const frequency_MHz = 10;
    const height_m = height_wl * wavelength_m(frequency_MHz);
    const got_m = resonantHeight_m(frequency_MHz, (height_m / heightOverDiameter) * 1000);
    expect(Math.abs(got_m / height_m - 1)).toBeLessThan(heightOverDiameter < 100 ? 0.0011 : 0.00031);
  });
  test.each(resonantHeights)("$frequency_MHz MHz, radius $radius_m m", ({ frequency_MHz, radius_m, height_m }) => {
    expect(Math.abs(resonantHeight_m(frequency_MHz, 2000 * radius_m) / height_m - 1)).toBeLessThan(0.004);
  });
});
