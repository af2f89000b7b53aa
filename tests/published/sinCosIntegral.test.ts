import { expect, test } from "vitest";
import { sinCosIntegral } from "../../engine/special/sinCosIntegral.ts";

/** M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, table 5.1, ten decimals; from memory. */
const rows: readonly (readonly [x: number, si: number, ci: number])[] = [
  [0.5, 0.493_107_418, -0.177_784_0788],
  [1, 0.946_083_0704, 0.337_403_9229],
  [2, 1.605_412_9768, 0.422_980_8288],
  [5, 1.549_931_2449, -0.190_029_7497],
  [10, 1.658_347_5942, -0.045_456_433],
];

test.each(rows)("Si and Ci of %f", (x, si, ci) => {
  const found = sinCosIntegral(x);
  expect(Math.abs(found.si - si)).toBeLessThanOrEqual(0.5e-10);
  expect(Math.abs(found.ci - ci)).toBeLessThanOrEqual(0.5e-10);
});
