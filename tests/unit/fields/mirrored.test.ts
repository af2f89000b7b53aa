import { describe, expect, test } from "vitest";
import type { FarField } from "../../../engine/fields/FarField.ts";
import { makeFarField } from "../../../engine/fields/makeFarField.ts";
import { radiatedPower } from "../../../engine/fields/radiatedPower.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { METRE_WAVE_Hz } from "../../support/randomWires.ts";

const k = 2 * Math.PI;
const soil = { kind: "plane", epsRe: 13, epsIm: -9 } as const;

/** Straight wires with ends as given, each end of a segment its own current. */
function farOf(...ends: (readonly [x: number, y: number, z: number, x: number, y: number, z: number])[]): FarField {
  const wires = ends.map(([x, y, z, u, v, w], i) => ({
    id: `${i}`,
    from_m: [x, y, z] as const,
    to_m: [u, v, w] as const,
    radius_m: 1e-4,
    segments: 6,
  }));
  const { segments } = segmentWires(wires, [], joinWires(wires, false), METRE_WAVE_Hz, 1);
  const currents = Float64Array.from({ length: 4 * segments.count }, (_, i) => Math.sin(1.7 * i * i + 1));
  return makeFarField(segments, currents, k, soil);
}

describe("a far field that is the same on both sides of the beam", () => {
  test("uprights along x are; one beside it, one that leans and one that lies are not", () => {
    expect(farOf([0, 0, 0, 0, 0, 0.3], [-0.2, 0, 0, -0.2, 0, 0.2]).mirrored).toBe(true);
    expect(farOf([0, 0, 0, 0, 0, 0.3], [-0.2, 0.01, 0, -0.2, 0.01, 0.2]).mirrored).toBe(false);
    expect(farOf([0, 0, 0, 0, 0, 0.3], [-0.2, 0, 0, -0.2, 0.1, 0.2]).mirrored).toBe(false);
    expect(farOf([0, 0, 0.01, 0, 0, 0.3], [0, 0, 0.01, 0, 0.2, 0.01]).mirrored).toBe(false);
  });

  test.each([0.1, 0.17, 0.6, 1.3])(
    "its power from one side is that of the whole circle, %s wavelengths apart",
    (apart) => {
      const far = farOf([0, 0, 0, 0, 0, 0.3], [-apart, 0, 0, -apart, 0, 0.2]);
      expect(far.mirrored).toBe(true);
      for (const [elevation, azimuth] of [
        [0.1, 0.7],
        [0.9, 2.4],
      ] as const)
        expect(far.intensity(elevation, azimuth) / far.intensity(elevation, -azimuth)).toBeCloseTo(1, 13);
      const one = radiatedPower(far, true, k * apart, k * 0.3);
      const whole = radiatedPower({ ...far, mirrored: false }, true, k * apart, k * 0.3);
      expect(one / whole).toBeCloseTo(1, 13);
    },
  );
});
