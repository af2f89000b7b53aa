import { expect, test } from "vitest";
import { readPlan, withoutReflector } from "../../../engine/index.ts";
import type { DesignTrace } from "../../../src/charts/DesignTrace.ts";
import { skyScale } from "../../../src/rooms/sky/skyScale.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";

const read = readPlan({ ...withoutReflector(demoPlan), ground: { kind: "perfect" } }, readoutRequest(demoPlan));
if (!read.ok) throw new Error("the test's own plan is not good");
const readout = read.value;

/** A design whose loudest gain in each cut is as given, in the midst of a gap and much less. */
function trace(elevation_dBi: number, azimuth_dBi: number): DesignTrace {
  const cut = (top_dBi: number) => ({
    angle_deg: [0, 45, 90, 135, 180],
    gain_dBi: [Number.NEGATIVE_INFINITY, -40, top_dBi, Number.NaN, -30],
  });
  return {
    id: "one",
    name: "one",
    role: "live",
    style: 0,
    readout: { ...readout, elevationCut: cut(elevation_dBi), azimuthCut: cut(azimuth_dBi) },
  };
}
const empty: DesignTrace = { ...trace(0, 0), readout: null };

test("one ring holds the loudest of both cuts and of all designs", () => {
  expect(skyScale([empty], null).outer_dBi).toBe(6);
  expect(skyScale([trace(5.9, 5.9), empty], null).outer_dBi).toBe(6);
  expect(skyScale([trace(6.1, 0)], null).outer_dBi).toBe(12);
  expect(skyScale([trace(0, 6.1)], null).outer_dBi).toBe(12);
  expect(skyScale([trace(1, 2), trace(12.1, 3)], null).outer_dBi).toBe(18);
});

test("a held ring stays, and it is said when a curve reaches past it", () => {
  expect(skyScale([trace(5.9, 3)], 6)).toEqual({ outer_dBi: 6, isOutgrown: false });
  expect(skyScale([trace(6, 3)], 6)).toEqual({ outer_dBi: 6, isOutgrown: false });
  expect(skyScale([trace(3, 1), trace(3, 6.1)], 6)).toEqual({ outer_dBi: 6, isOutgrown: true });
  expect(skyScale([trace(-20, -20)], 12)).toEqual({ outer_dBi: 12, isOutgrown: false });
});
