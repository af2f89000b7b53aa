import { ETA0_ohm } from "../constants.ts";
import { gaussLegendre } from "../quad/gaussLegendre.ts";
import type { FarField } from "./FarField.ts";

/**
 * Power carried away through the upper half space, or the whole sphere in free space:
 *
 *   P = 1/(2η₀) ∫∫ |F|² cos α dα dφ
 *
 * Azimuth by the trapezium rule, exact for a pattern of limited bandwidth; elevation by Gauss, over a ground in
 * v = √(α/(π/2)), which crowds the nodes at the horizon where the reflection coefficient turns fast.
 *
 * Accuracy: 1e-7 relative over perfect ground and in free space for arrays up to three wavelengths, 1e-5 over soil.
 *
 * @param across_rad k times the largest horizontal distance between wires
 * @param height_rad k times the largest height
 */
export function radiatedPower(far: FarField, halfSpace: boolean, across_rad: number, height_rad: number): number {
  // |F|² holds e^{jk(r − r')·φ̂} of pairs of wires, whose harmonics are negligible above k|r − r'| + 12.
  const azimuths = Math.ceil(across_rad) + 14;
  const { node, weight } = gaussLegendre(
    Math.min(200, (halfSpace ? 28 : 24) + Math.ceil(1.5 * (height_rad + across_rad))),
  );
  const directions = far.mirrored ? Math.floor(azimuths / 2) + 1 : azimuths;
  let total = 0;
  for (let i = 0; i < node.length; i++) {
    const v = node[i]!;
    const elevation = halfSpace ? 0.5 * Math.PI * v * v : Math.PI * (v - 0.5);
    const slope = halfSpace ? Math.PI * v : Math.PI;
    let ring = 0;
    for (let j = 0; j < directions; j++) {
      // On the axis of a mirrored pattern once, beside it for both sides.
      const times = far.mirrored && j > 0 && 2 * j < azimuths ? 2 : 1;
      ring += times * far.intensity(elevation, (2 * Math.PI * j) / azimuths);
    }
    total += weight[i]! * slope * Math.cos(elevation) * (ring / azimuths) * 2 * Math.PI;
  }
  return total / (2 * ETA0_ohm);
}
