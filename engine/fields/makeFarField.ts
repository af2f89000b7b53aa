import { ETA0_ohm } from "../constants.ts";
import type { Segments } from "../wires/Segments.ts";
import { buriedPart } from "./buriedPart.ts";
import type { FarField } from "./FarField.ts";
import type { FieldPart, Sight } from "./FieldParts.ts";
import { levelPart } from "./levelPart.ts";
import { reflection } from "./reflection.ts";
import { sinkRate } from "./sinkRate.ts";
import { slopingPart } from "./slopingPart.ts";
import { uprightPart } from "./uprightPart.ts";

export type FarGround =
  | { readonly kind: "none" }
  /** Complex relative permittivity εᵣ − jσ/(ωε₀); Infinity for a perfect ground. */
  | { readonly kind: "plane"; readonly epsRe: number; readonly epsIm: number };

/**
 * Far field of segments with linear currents:
 *
 *   F(r̂) = −jkη₀/4π · Σ_s ∫ I(s) (t)⊥ e^{jk r̂·r} ds,
 *
 * plus, over a ground, the same sum for the downward ray r̂' = (r_x, r_y, −r_z) with its TM and TE parts times the
 * plane-wave reflection coefficients; of segments in soil, what passes through the surface. The integral over a linear
 * current is exact (see linearIntegral), along a straight run of level ones to 1e-10 (straightIntegral).
 *
 * What depends on elevation alone is kept for the last elevation asked, so ask for a cut at one elevation in a row.
 *
 * @param currents 4·S: Re, Im at the start and at the end of each segment [A peak]
 */
export function makeFarField(segments: Segments, currents: Float64Array, k: number, ground: FarGround): FarField {
  const upright: number[] = [];
  const level: number[] = [];
  const sloping: number[] = [];
  const buried: number[] = [];
  const soil = ground.kind === "plane" && ground.epsRe !== Number.POSITIVE_INFINITY ? ground : undefined;
  for (let s = 0; s < segments.count; s++) {
    const [x, y, z] = [0, 1, 2].map((c) => Math.abs(segments.tangent[3 * s + c]!)) as [number, number, number];
    const low = Math.min(0, segments.tangent[3 * s + 2]!) * segments.length[s]! + segments.start[3 * s + 2]!;
    if (soil && low < -1e-9 && z >= 1e-12) buried.push(s);
    else (x < 1e-12 && y < 1e-12 ? upright : z < 1e-12 ? level : sloping).push(s);
  }
  const parts: FieldPart[] = [];
  if (upright.length > 0) parts.push(uprightPart(segments, currents, k, upright));
  if (level.length > 0) parts.push(levelPart(segments, currents, k, level, soil !== undefined));
  if (sloping.length > 0) parts.push(slopingPart(segments, currents, k, sloping));
  if (soil && buried.length > 0) parts.push(buriedPart(segments, currents, k, buried, soil.epsRe, soil.epsIm));

  const scale = (k * ETA0_ohm) / (4 * Math.PI);
  const sight: Sight = { cosA: 1, sinA: 0, cosP: 1, sinP: 0, gamma: new Float64Array(4), sink: new Float64Array(2) };
  const sum = new Float64Array(4);
  let keptElevation = Number.NaN;

  const field = (out: Float64Array, elevation: number, azimuth: number): Float64Array => {
    if (ground.kind === "plane" && elevation < 0) return out.fill(0, 0, 4);
    if (elevation !== keptElevation) {
      keptElevation = elevation;
      sight.cosA = Math.cos(elevation);
      sight.sinA = Math.sin(elevation);
      if (soil) sinkRate(sight.sink, soil.epsRe, soil.epsIm, elevation);
      if (ground.kind === "plane") reflection(sight.gamma, ground.epsRe, ground.epsIm, elevation);
      for (const part of parts) part.setElevation(sight);
    }
    sight.cosP = Math.cos(azimuth);
    sight.sinP = Math.sin(azimuth);
    sum.fill(0);
    for (const part of parts) part.add(sum, sight);
    // Times −j: (a + jb)(−j) = b − ja.
    out[0] = scale * sum[1]!;
    out[1] = -scale * sum[0]!;
    out[2] = scale * sum[3]!;
    out[3] = -scale * sum[2]!;
    return out;
  };

  const mirrored = parts.every((part) => part.mirrored());
  const scratch = new Float64Array(4);
  return {
    field,
    mirrored,
    intensity(elevation, azimuth) {
      const f = field(scratch, elevation, azimuth);
      return f[0]! * f[0]! + f[1]! * f[1]! + f[2]! * f[2]! + f[3]! * f[3]!;
    },
  };
}
