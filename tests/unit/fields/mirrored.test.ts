import { describe, expect, test } from "vitest";
import type { FarField } from "../../../engine/fields/FarField.ts";
import { makeFarField } from "../../../engine/fields/makeFarField.ts";
import { radiatedPower } from "../../../engine/fields/radiatedPower.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { METRE_WAVE_Hz } from "../../support/randomWires.ts";

const k = 2 * Math.PI;
const soil = { kind: "plane", epsRe: 13, epsIm: -9 } as const;

type Ends = readonly [x: number, y: number, z: number, x: number, y: number, z: number];

/** Straight wires with ends as given, each end of a segment its own current. */
const farOf = (...ends: Ends[]): FarField => farWith((_, i) => i, ...ends);

/** … or the current of another place: `like` of the wire and of the number, counted over all wires. */
function farWith(like: (wire: number, i: number) => number, ...ends: Ends[]): FarField {
  const wires = ends.map(([x, y, z, u, v, w], i) => ({
    id: `${i}`,
    from_m: [x, y, z] as const,
    to_m: [u, v, w] as const,
    radius_m: 1e-4,
    segments: 6,
  }));
  const { segments } = segmentWires(wires, [], joinWires(wires, false), METRE_WAVE_Hz, 1);
  const currents = Float64Array.from({ length: 4 * segments.count }, (_, i) => {
    const alike = like(segments.wire[i >> 2]!, i);
    return Math.sin(1.7 * alike * alike + 1);
  });
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

  // A mast, a radial along the beam and two beside it, of which the second may carry what the first does.
  const mast: Ends = [0, 0, 0.02, 0, 0, 0.3];
  const ahead: Ends = [0, 0, 0.02, 0.2, 0, 0.02];
  const left: Ends = [0, 0, 0.02, 0.1, 0.15, 0.02];
  const right: Ends = [0, 0, 0.02, 0.1, -0.15, 0.02];
  const alike = (wire: number, i: number) => (wire === 3 ? i - 24 : i);

  test("radials on both sides are, where they lie and carry alike", () => {
    expect(farWith(alike, mast, ahead, left, right).mirrored).toBe(true);
    expect(farOf(mast, ahead, left, right).mirrored).toBe(false);
    expect(farWith(alike, mast, ahead, left, [0, 0, 0.02, 0.1, -0.151, 0.02]).mirrored).toBe(false);
    expect(farWith(alike, mast, ahead, left).mirrored).toBe(false);
    const turned: Ends = [0.1, -0.15, 0.02, 0, 0, 0.02];
    expect(farWith(alike, mast, ahead, left, turned).mirrored).toBe(false);
  });

  test("their field is the same on both sides, and its power from one", () => {
    const far = farWith(alike, mast, ahead, left, right);
    for (const [elevation, azimuth] of [
      [0.1, 0.7],
      [0.9, 2.4],
    ] as const)
      expect(far.intensity(elevation, azimuth) / far.intensity(elevation, -azimuth)).toBeCloseTo(1, 12);
    const whole = radiatedPower({ ...far, mirrored: false }, true, k * 0.4, k * 0.3);
    expect(radiatedPower(far, true, k * 0.4, k * 0.3) / whole).toBeCloseTo(1, 12);
  });
});
