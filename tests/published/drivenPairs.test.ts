import { expect, test } from "vitest";
import {
  assessHarness,
  type Complex,
  drivePoints,
  makeLine,
  oddQuarters_m,
  type PhasedHarnessRequest,
  phasedHarness,
} from "../../engine/index.ts";
import basics from "../fixtures/basics.json" with { type: "json" };
import fixture from "../fixtures/mutualImpedance.json" with { type: "json" };
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import { okValue } from "../support/okValue.ts";
import { rowsOf } from "../support/rowsOf.ts";
import { sinusoidalStates } from "../support/sinusoidalStates.ts";
import { uprights } from "../support/uprights.ts";

/**
 * Rows 3-60, 3-61 and the resistance in 3-65: what a base shows when the currents are as wanted. The gains in 3-62, 3-64
 * and 3-65 are of the far field, and tested with it in mutualImpedance.test.ts.
 */
const [single] = rowsOf(basics, "1-06");
const [mutual, lead, lag, close] = rowsOf(fixture, "3-06", "3-60", "3-61", "3-65");
const self = single!.value as Complex;
// Row 3-06 is of dipoles; monopoles over perfect ground have half.
const halved = mutual!.value as Complex;
const z12 = { re: halved.re / 2, im: halved.im / 2 };
const cardioid: readonly (readonly Complex[])[] = [
  [self, z12],
  [z12, self],
];
const quarterLate: Complex = { re: 0, im: -1 };

test("two quarter waves a quarter wave and a quarter period apart: base impedances from printed Z₁₁ and Z₁₂", () => {
  expect([condition(lead!, "spacing_m"), condition(mutual!, "spacing_m")]).toEqual([0.25, 0.25]);
  const [first, second] = drivePoints(cardioid, [{ re: 1, im: 0 }, quarterLate]);
  expect(excess(lead!, first!.impedance_ohm)).toBeLessThanOrEqual(1);
  expect(excess(lag!, second!.impedance_ohm)).toBeLessThanOrEqual(1);
});

test("the same impedances stand at the bases when a harness makes the currents", () => {
  const line = okValue(
    makeLine({
      id: "free",
      name: "75 ohm without loss",
      impedance_ohm: 75,
      velocityFactor: 0.66,
      loss: { root_dBPer100m: 0, linear_dBPer100m: 0 },
    }),
  );
  const f = 299.792458;
  const quarter = oddQuarters_m(line, f, 1);
  const request: PhasedHarnessRequest = {
    impedance_ohm: cardioid,
    frequency_MHz: f,
    ratio: quarterLate,
    lengths_m: [quarter, quarter],
    line,
    phasing: "l-network",
  };
  for (const phasing of ["l-network", "pi-network"] as const) {
    const design = okValue(phasedHarness({ ...request, phasing }));
    const [point] = okValue(assessHarness(design, [{ frequency_MHz: f, impedance_ohm: cardioid }]));
    const [first, second] = point!.solution.bases;
    expect(excess(lead!, first!.impedance_ohm)).toBeLessThanOrEqual(1);
    expect(excess(lag!, second!.impedance_ohm)).toBeLessThanOrEqual(1);
  }
});

test("close dipoles in opposition: R₁₁ − R₁₂ is left", () => {
  const spacing_m = condition(close!, "spacing_m");
  const states = sinusoidalStates(
    uprights(condition(close!, "frequency_hz"), { kind: "free-space" }, [
      { length_m: 0.5, radius_m: 1e-6 },
      { length_m: 0.5, radius_m: 1e-6, x_m: spacing_m },
    ]),
  );
  const z = [0, 1].map((i) => [0, 1].map((j) => states.reaction(i, j)));
  const [first] = drivePoints(z, [
    { re: 1, im: 0 },
    { re: -1, im: 0 },
  ]);
  const [, left] = close!.value as readonly number[];
  const [, tolerance] = close!.tolerance.abs as readonly number[];
  expect(Math.abs(first!.impedance_ohm.re - left!)).toBeLessThanOrEqual(tolerance!);
});
