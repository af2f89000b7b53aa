import { C0_mPerS, EPS0_FPerM, MU0_HPerM } from "../constants.ts";
import type { HalfSpace } from "../kernel/halfSpace/HalfSpace.ts";
import { gaussLegendre } from "../quad/gaussLegendre.ts";
import { expTable } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";

/** Gauss nodes a panel, and the phase 2·half-width that they carry to 4e-10. */
const NODES = 16;
const PHASE_PER_PANEL = 24;
/** The sum stops where e^{−2 u₀ h} of the lowest wire has fallen to e^−14. */
const DECAY = 14;
/** Panels shrink by this towards a branch point, this often. */
const SHRINK = 4;
const LEVELS = 7;

/**
 * Power that flows down through the surface of the soil, from currents alone: no impedance and no kernel table is used.
 *
 * Fields on z = 0 as sums of plane waves e^{−j(k_x x + k_y y)}, k = λ (cos α, sin α), u = √(λ² − k²). A current at z' > 0
 * sends down e^{−u₀ z'}; with the transform of all currents
 *
 *   N = ∫ I t e^{jk·r} e^{−u₀ z} ds,  N_κ along k, N_φ across it, N_z,
 *
 * A = μ₀ N/2u₀ gives the incident E_φ = −jωμ₀ N_φ/2u₀ (TE) and H_φ = (u₀ N_κ + jλ N_z)/2u₀ (TM). What the surface lets
 * through is 2u₀/(u₀ + u₁) of the one and 2εu₀/(εu₀ + u₁) of the other, and the waves below carry ½|E_φ|² Im u₁/ωμ₀ and
 * ½|H_φ|² Im(u₁/ε)/ωε₀ down. By Parseval, with λ dλ = |u₀| d|u₀|,
 *
 *   P = 1/8π² ∫ λ dλ ∮ dα [ ωμ₀ |N_φ|² Im u₁/|u₀ + u₁|² + |ε|² |u₀ N_κ + jλ N_z|² Im(u₁/ε)/(ωε₀ |εu₀ + u₁|²) ],
 *
 * over propagating λ < k₀ and evanescent λ, to where e^{−2u₀h} of the lowest wire has died. α by the trapezium rule with
 * more points than |N|² has harmonics; u₀ by Gauss panels that follow its phase and crowd at the branch points.
 *
 * Accuracy: 1e-6 of the sum. Standard theory of plane-wave spectra, from memory. Cost grows as (extent/height)².
 *
 * @param currents 4·S: Re, Im at the start and at the end of each segment [A peak]
 */
export function soilPower(segments: Segments, currents: Float64Array, soil: HalfSpace): number {
  const plan = layOut(segments, soil);
  const { node, weight } = gaussLegendre(NODES);
  let total = 0;
  for (const [from, to, propagating] of plan.panels)
    for (let i = 0; i < NODES; i++) {
      const u = from + (to - from) * node[i]!;
      total += (to - from) * weight[i]! * u * ring(segments, currents, soil, u, propagating, plan.across_m);
    }
  return total / (8 * Math.PI * Math.PI);
}

/** Evaluations of one segment's integral that `soilPower` would need. */
export function soilPowerCost(segments: Segments, soil: HalfSpace): number {
  const { panels, across_m } = layOut(segments, soil);
  let points = 0;
  for (const [from, to, propagating] of panels)
    points += NODES * azimuths(lambdaOf(soil.k0, 0.5 * (from + to), propagating) * across_m);
  return points * segments.count;
}

type Panel = readonly [from: number, to: number, propagating: boolean];

const lambdaOf = (k0: number, u: number, propagating: boolean) =>
  Math.sqrt(Math.max(0, propagating ? k0 * k0 - u * u : k0 * k0 + u * u));

/** |N|² holds e^{jk·(r − r')}, whose harmonics die beyond λ|r − r'| plus a few of its cube roots. */
const azimuths = (phase: number) => Math.ceil(phase + 7 * Math.cbrt(phase)) + 13;

function layOut(segments: Segments, soil: HalfSpace): { panels: Panel[]; across_m: number } {
  const { start, tangent, length, count } = segments;
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  const ends: [number, number][] = [];
  for (let s = 0; s < count; s++)
    for (const L of [0, length[s]!]) {
      const z = start[3 * s + 2]! + L * tangent[3 * s + 2]!;
      low = Math.min(low, z);
      high = Math.max(high, z);
      ends.push([start[3 * s]! + L * tangent[3 * s]!, start[3 * s + 1]! + L * tangent[3 * s + 1]!]);
    }
  let across_m = 0;
  for (let i = 0; i < ends.length; i++)
    for (let j = 0; j < i; j++) {
      const [x, y] = [ends[i]![0] - ends[j]![0], ends[i]![1] - ends[j]![1]];
      across_m = Math.max(across_m, Math.sqrt(x * x + y * y));
    }

  const panels: Panel[] = [];
  const { k0, k1Re } = soil;
  const fill = (from: number, to: number, propagating: boolean) => {
    for (let a = from; a < to; ) {
      // Up a tall wire e^{−u(z + z')} has died where u z is large.
      const tall = 2 * (propagating ? high : Math.min(high, DECAY / Math.max(a, k0)));
      const width = PHASE_PER_PANEL / (across_m + tall);
      // No crumb at the end: what is left is cut evenly.
      const b = a + (to - a) / Math.max(1, Math.ceil((to - a) / width));
      panels.push([a, b > a ? Math.min(b, to) : to, propagating]);
      a = panels.at(-1)![1];
      if (to - a < 1e-9 * to) break;
    }
  };
  /** From `at` away to `to`, panels growing from a crumb at the branch point. */
  const grade = (at: number, to: number, propagating: boolean) => {
    let far = to;
    for (let level = 0; level <= LEVELS; level++) {
      const near = level === LEVELS ? at : at + (far - at) / SHRINK;
      if (Math.abs(far - near) > 0) fill(Math.min(near, far), Math.max(near, far), propagating);
      far = near;
    }
  };
  const end = Math.max(k0, DECAY / (2 * low));
  const knee = Math.sqrt(Math.max(0, k1Re * k1Re - k0 * k0));
  grade(0, k0, true);
  if (knee > 0 && knee < end) {
    grade(0, knee / 2, false);
    grade(knee, knee / 2, false);
    grade(knee, Math.min(end, 2 * knee), false);
    if (end > 2 * knee) fill(2 * knee, end, false);
  } else grade(0, end, false);
  return { panels, across_m };
}

/** ∮ dα of the bracket in `soilPower`, at |u₀| = u. */
function ring(
  segments: Segments,
  currents: Float64Array,
  soil: HalfSpace,
  u: number,
  propagating: boolean,
  across_m: number,
): number {
  const { k0, epsRe, epsIm } = soil;
  const lambda = lambdaOf(k0, u, propagating);
  const u0Re = propagating ? 0 : u;
  const u0Im = propagating ? u : 0;
  // u₁² = λ² − εk₀² = u₀² + (1 − ε)k₀², in the first quadrant or on its edge.
  const qRe = (propagating ? -u * u : u * u) + (1 - epsRe) * k0 * k0;
  const qIm = -epsIm * k0 * k0;
  const modulus = Math.sqrt(qRe * qRe + qIm * qIm);
  const u1Re = qRe > 0 ? Math.sqrt(0.5 * (modulus + qRe)) : modulus === 0 ? 0 : qIm / Math.sqrt(2 * (modulus - qRe));
  const u1Im = qRe > 0 ? (0.5 * qIm) / u1Re : Math.sqrt(0.5 * (modulus - qRe));
  const omega = k0 * C0_mPerS;
  const sum2 = (u0Re + u1Re) ** 2 + (u0Im + u1Im) ** 2;
  const weighted2 = (epsRe * u0Re - epsIm * u0Im + u1Re) ** 2 + (epsRe * u0Im + epsIm * u0Re + u1Im) ** 2;
  const te = (omega * MU0_HPerM * u1Im) / sum2;
  // |ε|² Im(u₁/ε) = Im(u₁ ε*).
  const tm = (u1Im * epsRe - u1Re * epsIm) / (omega * EPS0_FPerM * weighted2);
  if (te === 0 && tm === 0) return 0;

  const M = azimuths(lambda * across_m);
  let total = 0;
  for (let m = 0; m < M; m++) {
    const alpha = (2 * Math.PI * m) / M;
    transform(N, segments, currents, lambda * Math.cos(alpha), lambda * Math.sin(alpha), u0Re, u0Im);
    const c = Math.cos(alpha);
    const s = Math.sin(alpha);
    const kRe = N[0]! * c + N[2]! * s;
    const kIm = N[1]! * c + N[3]! * s;
    const fRe = N[2]! * c - N[0]! * s;
    const fIm = N[3]! * c - N[1]! * s;
    const hRe = u0Re * kRe - u0Im * kIm - lambda * N[5]!;
    const hIm = u0Re * kIm + u0Im * kRe + lambda * N[4]!;
    total += te * (fRe * fRe + fIm * fIm) + tm * (hRe * hRe + hIm * hIm);
  }
  return (2 * Math.PI * total) / M;
}

const N = new Float64Array(6);
const e = new Float64Array(2);

/** N of `soilPower` for one k: Re, Im of x, y, z [A m]. Exact for linear currents. */
function transform(
  out: Float64Array,
  { start, tangent, length, count, wire }: Segments,
  currents: Float64Array,
  kx: number,
  ky: number,
  uRe: number,
  uIm: number,
): void {
  out.fill(0);
  let pRe = 0;
  let pIm = 0;
  for (let i = 0; i < count; i++) {
    const L = length[i]!;
    const [tx, ty, tz] = [tangent[3 * i]!, tangent[3 * i + 1]!, tangent[3 * i + 2]!];
    const z = start[3 * i + 2]!;
    const phase = kx * start[3 * i]! + ky * start[3 * i + 1]! - uIm * z;
    if (i === 0 || wire[i] !== wire[i - 1]) {
      expTable(e, 0, phase);
      const size = Math.exp(-uRe * z);
      pRe = size * e[0]!;
      pIm = size * e[1]!;
    }
    // Along the segment e^{cv}, v from 0 to 1.
    const cRe = -L * uRe * tz;
    const cIm = L * (kx * tx + ky * ty - uIm * tz);
    expTable(e, 0, phase + cIm);
    const size = Math.exp(-uRe * z + cRe);
    const qRe = size * e[0]!;
    const qIm = size * e[1]!;
    const [aRe, aIm, bRe, bIm] = [currents[4 * i]!, currents[4 * i + 1]!, currents[4 * i + 2]!, currents[4 * i + 3]!];
    const dRe = bRe - aRe;
    const dIm = bIm - aIm;
    const c2 = cRe * cRe + cIm * cIm;
    let sRe: number;
    let sIm: number;
    if (c2 > 0.04) {
      // [b q − a p]/c − (b − a)(q − p)/c²
      const gRe = ((qRe - pRe) * cRe + (qIm - pIm) * cIm) / c2;
      const gIm = ((qIm - pIm) * cRe - (qRe - pRe) * cIm) / c2;
      const nRe = bRe * qRe - bIm * qIm - aRe * pRe + aIm * pIm - dRe * gRe + dIm * gIm;
      const nIm = bRe * qIm + bIm * qRe - aRe * pIm - aIm * pRe - dRe * gIm - dIm * gRe;
      sRe = (nRe * cRe + nIm * cIm) / c2;
      sIm = (nIm * cRe - nRe * cIm) / c2;
    } else {
      // p Σ cⁿ/n! [a/(n + 1) + (b − a)/(n + 2)]; the first term left out is 0.2⁸/8! of the whole.
      let tRe = 1;
      let tIm = 0;
      let nRe = 0;
      let nIm = 0;
      for (let n = 0; n < 8; n++) {
        const xRe = aRe / (n + 1) + dRe / (n + 2);
        const xIm = aIm / (n + 1) + dIm / (n + 2);
        nRe += tRe * xRe - tIm * xIm;
        nIm += tRe * xIm + tIm * xRe;
        const next = (tRe * cRe - tIm * cIm) / (n + 1);
        tIm = (tRe * cIm + tIm * cRe) / (n + 1);
        tRe = next;
      }
      sRe = pRe * nRe - pIm * nIm;
      sIm = pRe * nIm + pIm * nRe;
    }
    out[0]! += L * tx * sRe;
    out[1]! += L * tx * sIm;
    out[2]! += L * ty * sRe;
    out[3]! += L * ty * sIm;
    out[4]! += L * tz * sRe;
    out[5]! += L * tz * sIm;
    pRe = qRe;
    pIm = qIm;
  }
}
