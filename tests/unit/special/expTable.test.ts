import { describe, expect, test } from "vitest";
import { expTable, STEP_RAD, TABLE_SIZE } from "../../../engine/special/expTable.ts";

describe("expTable", () => {
  const worst = (from: number, to: number, count: number) => {
    const out = new Float64Array(2);
    let error = 0;
    for (let i = 0; i <= count; i++) {
      const x = from + ((to - from) * i) / count;
      expTable(out, 0, x);
      error = Math.max(error, Math.abs(out[0]! - Math.cos(x)), Math.abs(out[1]! - Math.sin(x)));
    }
    return error;
  };

  test("stays within the error it states, for either sign", () => {
    expect(worst(-Math.PI, Math.PI, 100_003)).toBeLessThan(3e-16 + 2e-16 * Math.PI);
    expect(worst(-200, 200, 100_003)).toBeLessThan(3e-16 + 2e-16 * 200);
  });

  test("exact table entries and both sides of a change of entry", () => {
    const out = new Float64Array(4);
    for (let i = -3 * TABLE_SIZE; i <= 3 * TABLE_SIZE; i++)
      for (const nudge of [-1e-9, 0, 1e-9]) {
        const x = (i + 0.5) * STEP_RAD + nudge;
        expTable(out, 2, x);
        expect(Math.abs(out[2]! - Math.cos(x))).toBeLessThan(5e-15);
        expect(Math.abs(out[3]! - Math.sin(x))).toBeLessThan(5e-15);
      }
    expect(out.slice(0, 2)).toEqual(new Float64Array(2));
  });
});
