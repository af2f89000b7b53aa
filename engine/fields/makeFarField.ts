import { ETA0_ohm } from "../constants.ts";
import { expTable } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";
import type { FarField } from "./FarField.ts";
import { reflection } from "./reflection.ts";

export type FarGround =
  | { readonly kind: "none" }
  /** Complex relative permittivity εᵣ − jσ/(ωε₀); Infinity for a perfect ground. */
  | { readonly kind: "plane"; readonly epsRe: number; readonly epsIm: number };

/** Below this ψ² the integrals go by their series, whose next terms are ψ⁶/5040 and ψ⁵/840 of 1. */
const SMALL_PSI2 = 4e-4;

interface Upright {
  readonly x: number;
  readonly y: number;
  readonly segments: number[];
}

/**
 * Far field of segments with linear currents:
 *
 *   F(r̂) = −jkη₀/4π · Σ_s ∫ I(s) (t)⊥ e^{jk r̂·r} ds,
 *
 * plus, over a ground, the same sum for the downward ray r̂' = (r_x, r_y, −r_z) with its TM and TE parts times the
 * plane-wave reflection coefficients. The integral over a linear current is exact: with ψ = ½k L t·r̂,
 *   ∫ = L e^{jk r̂·mid} [ Ī sin ψ/ψ + j ½ΔI (sin ψ/ψ² − cos ψ/ψ) ].
 *
 * Upright segments on one vertical line have a sum that does not depend on azimuth; it is kept for the last elevation,
 * so that an azimuth cut costs little more than one direction.
 *
 * @param currents 4·S: Re, Im at the start and at the end of each segment [A peak]
 */
export function makeFarField(segments: Segments, currents: Float64Array, k: number, ground: FarGround): FarField {
  const { start, tangent, length } = segments;
  const uprights: Upright[] = [];
  const others: number[] = [];
  for (let s = 0; s < segments.count; s++) {
    if (Math.abs(tangent[3 * s]!) > 1e-12 || Math.abs(tangent[3 * s + 1]!) > 1e-12) {
      others.push(s);
      continue;
    }
    const x = start[3 * s]!;
    const y = start[3 * s + 1]!;
    const line = uprights.find((u) => Math.abs(u.x - x) < 1e-9 && Math.abs(u.y - y) < 1e-9);
    if (line) line.segments.push(s);
    else uprights.push({ x, y, segments: [s] });
  }

  const scale = (k * ETA0_ohm) / (4 * Math.PI);
  const gamma = new Float64Array(4);
  const e = new Float64Array(2);
  // Per upright at the kept elevation: Σ of the vertical current's integral, direct + reflected, without e^{jk(r_x x + r_y y)}.
  const sum = new Float64Array(2 * uprights.length);
  let keptElevation = Number.NaN;
  let cosA = 1;
  let sinA = 0;

  /** Writes the complex ∫ I e^{jk(…)} of one segment: phase at its middle, ψ as above. */
  const integral = (s: number, phase: number, psi: number, out: Float64Array) => {
    const p2 = psi * psi;
    const even = p2 < SMALL_PSI2 ? 1 - p2 / 6 + (p2 * p2) / 120 : Math.sin(psi) / psi;
    const odd = p2 < SMALL_PSI2 ? psi * (1 / 3 - p2 / 30) : Math.sin(psi) / p2 - Math.cos(psi) / psi;
    const ar = currents[4 * s]!;
    const ai = currents[4 * s + 1]!;
    const br = currents[4 * s + 2]!;
    const bi = currents[4 * s + 3]!;
    const re = 0.5 * (ar + br) * even - 0.5 * (bi - ai) * odd;
    const im = 0.5 * (ai + bi) * even + 0.5 * (br - ar) * odd;
    expTable(e, 0, phase);
    const L = length[s]!;
    out[0] = L * (re * e[0]! - im * e[1]!);
    out[1] = L * (re * e[1]! + im * e[0]!);
  };
  const part = new Float64Array(2);

  const setElevation = (elevation: number) => {
    if (elevation === keptElevation) return;
    keptElevation = elevation;
    cosA = Math.cos(elevation);
    sinA = Math.sin(elevation);
    if (ground.kind === "plane") reflection(gamma, ground.epsRe, ground.epsIm, elevation);
    for (let u = 0; u < uprights.length; u++) {
      let re = 0;
      let im = 0;
      for (const s of uprights[u]!.segments) {
        const tz = tangent[3 * s + 2]!;
        const L = length[s]!;
        const psi = 0.5 * k * L * tz * sinA;
        const p2 = psi * psi;
        const even = p2 < SMALL_PSI2 ? 1 - p2 / 6 + (p2 * p2) / 120 : Math.sin(psi) / psi;
        const odd = p2 < SMALL_PSI2 ? psi * (1 / 3 - p2 / 30) : Math.sin(psi) / p2 - Math.cos(psi) / psi;
        const sr = 0.5 * even * (currents[4 * s]! + currents[4 * s + 2]!);
        const si = 0.5 * even * (currents[4 * s + 1]! + currents[4 * s + 3]!);
        const dr = -0.5 * odd * (currents[4 * s + 3]! - currents[4 * s + 1]!);
        const di = 0.5 * odd * (currents[4 * s + 2]! - currents[4 * s]!);
        expTable(e, 0, k * (start[3 * s + 2]! + 0.5 * L * tz) * sinA);
        const w = tz * L;
        const c = w * e[0]!;
        const v = w * e[1]!;
        re += (sr + dr) * c - (si + di) * v;
        im += (sr + dr) * v + (si + di) * c;
        if (ground.kind === "plane") {
          // Downward ray: phase and ψ change sign.
          const qr = (sr - dr) * c + (si - di) * v;
          const qi = (si - di) * c - (sr - dr) * v;
          re += gamma[0]! * qr - gamma[1]! * qi;
          im += gamma[0]! * qi + gamma[1]! * qr;
        }
      }
      sum[2 * u] = re;
      sum[2 * u + 1] = im;
    }
  };

  const field = (out: Float64Array, elevation: number, azimuth: number): Float64Array => {
    if (ground.kind === "plane" && elevation < 0) return out.fill(0, 0, 4);
    setElevation(elevation);
    const cp = Math.cos(azimuth);
    const sp = Math.sin(azimuth);
    const rx = cosA * cp;
    const ry = cosA * sp;
    let tr = 0;
    let ti = 0;
    let fr = 0;
    let fi = 0;
    // θ̂ = (sin α cos φ, sin α sin φ, −cos α): an upright gives −cos α.
    for (let u = 0; u < uprights.length; u++) {
      expTable(e, 0, k * (rx * uprights[u]!.x + ry * uprights[u]!.y));
      tr -= cosA * (sum[2 * u]! * e[0]! - sum[2 * u + 1]! * e[1]!);
      ti -= cosA * (sum[2 * u]! * e[1]! + sum[2 * u + 1]! * e[0]!);
    }
    for (const s of others) {
      const tx = tangent[3 * s]!;
      const ty = tangent[3 * s + 1]!;
      const tz = tangent[3 * s + 2]!;
      const L = length[s]!;
      const level = k * (rx * (start[3 * s]! + 0.5 * L * tx) + ry * (start[3 * s + 1]! + 0.5 * L * ty));
      const rise = k * sinA * (start[3 * s + 2]! + 0.5 * L * tz);
      const psiLevel = 0.5 * k * L * (rx * tx + ry * ty);
      const psiRise = 0.5 * k * L * sinA * tz;
      const alongPhi = ty * cp - tx * sp;
      const alongLevel = sinA * (tx * cp + ty * sp);
      integral(s, level + rise, psiLevel + psiRise, part);
      const up = alongLevel - tz * cosA;
      tr += up * part[0]!;
      ti += up * part[1]!;
      fr += alongPhi * part[0]!;
      fi += alongPhi * part[1]!;
      if (ground.kind === "plane") {
        // θ̂ of the downward ray is (−sin α cos φ, −sin α sin φ, −cos α).
        integral(s, level - rise, psiLevel - psiRise, part);
        const down = -alongLevel - tz * cosA;
        tr += down * (gamma[0]! * part[0]! - gamma[1]! * part[1]!);
        ti += down * (gamma[0]! * part[1]! + gamma[1]! * part[0]!);
        fr += alongPhi * (gamma[2]! * part[0]! - gamma[3]! * part[1]!);
        fi += alongPhi * (gamma[2]! * part[1]! + gamma[3]! * part[0]!);
      }
    }
    // Times −j: (a + jb)(−j) = b − ja.
    out[0] = scale * ti;
    out[1] = -scale * tr;
    out[2] = scale * fi;
    out[3] = -scale * fr;
    return out;
  };

  const scratch = new Float64Array(4);
  return {
    field,
    intensity(elevation, azimuth) {
      field(scratch, elevation, azimuth);
      return (
        scratch[0]! * scratch[0]! + scratch[1]! * scratch[1]! + scratch[2]! * scratch[2]! + scratch[3]! * scratch[3]!
      );
    },
  };
}
