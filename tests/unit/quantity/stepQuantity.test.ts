import { expect, test } from "vitest";
import type { QuantityKind, UnitSystem } from "../../../src/ui/quantity/QuantityKind.ts";
import { stepQuantity } from "../../../src/ui/quantity/stepQuantity.ts";

test.each<[number, number, QuantityKind, UnitSystem, number]>([
  [10.1, 1, "length_m", "metric", 10.11],
  [10.1, -1, "length_m", "metric", 10.09],
  [10.1, 10, "length_m", "metric", 10.2],
  // Between two places of the grid: on to the next place, not past it.
  [10.104, 1, "length_m", "metric", 10.11],
  [10.104, -1, "length_m", "metric", 10.1],
  [0, -1, "length_m", "metric", -0.01],
  [10 * 0.3048, 1, "length_m", "imperial", 120.5 * 0.0254],
  [1.6, 1, "diameter_mm", "metric", 1.7],
  [7.1, 1, "frequency_MHz", "metric", 7.105],
  [7.1, -10, "frequency_MHz", "metric", 7.05],
  [0.005, 1, "conductivity_SPerM", "metric", 0.0055],
  [62, 1, "bearing_deg", "metric", 63],
  [359, 1, "bearing_deg", "metric", 0],
  [0, -10, "bearing_deg", "metric", 350],
  [16, 1, "count", "metric", 17],
  [0, -1, "count", "metric", -1],
])("%s stepped by %s as %s, %s: %s", (from, presses, kind, units, to) => {
  expect(stepQuantity(from, presses, kind, units)).toBe(Number(to.toPrecision(12)));
});

test("a hundred steps up and down end where they began, exactly", () => {
  let value = 10.1;
  for (let i = 0; i < 100; i++) value = stepQuantity(value, 1, "length_m", "metric");
  expect(value).toBe(11.1);
  for (let i = 0; i < 100; i++) value = stepQuantity(value, -1, "length_m", "metric");
  expect(value).toBe(10.1);
});

test("wire in inch countries steps by gauge, thicker upwards; what is no gauge steps by sixteenths", () => {
  const gauge14 = 0.127 * 92 ** (22 / 39);
  const gauge12 = 0.127 * 92 ** (24 / 39);
  expect(stepQuantity(gauge14, 2, "diameter_mm", "imperial")).toBeCloseTo(gauge12, 10);
  expect(stepQuantity(25.4, 1, "diameter_mm", "imperial")).toBeCloseTo(25.4 * 1.0625, 10);
});
