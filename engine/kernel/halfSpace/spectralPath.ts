import { gaussLegendre } from "../../quad/gaussLegendre.ts";
import type { Placement } from "./Placement.ts";

/** A rectangle of horizontal distances ρ and height sums ζ that one path serves [m]. */
export interface Patch {
  readonly rho0: number;
  readonly rho1: number;
  readonly zeta0: number;
  readonly zeta1: number;
}

/** Which function of λρ goes with a node. */
export const STANDING = 0;
export const FIRST = 1;
export const SECOND = 2;

/** Nodes λ and weights dλ of a path in the complex plane, structure of arrays. */
export interface SpectralPath {
  count: number;
  /** 4 per node: Re λ, Im λ, Re w, Im w. */
  data: Float64Array;
  /** STANDING, FIRST or SECOND. */
  kind: Uint8Array;
}

/** Exponent at which what is left of a decaying tail is dropped: e^{−37} = 1e-16. */
const TAIL = 37;
/** Exponent at which the loop round k1 is dropped. */
const DEEP = 32;
/** Largest change of phase or of exponent over one panel [rad]. */
const SWING = 8;

/**
 * The path of integration from 0 to ∞ for all points of a patch.
 *
 *    Im λ
 *      |   .___________________.  →  J up to λa, lifted by j min(0.6 k0, 4/ρ) over the branch points
 *      |  /      k0            |\    beyond it J = ½(H⁽¹⁾ + H⁽²⁾), one half on each ray (ζc ± jρc)/Rc:
 *      | /    x       x k1     | \   e^{−u ζ} H(λρ) decays there as e^{−tR}, and does not oscillate
 *      0------------------------------ Re λ
 *
 * Over patches that lie steeply (ρ ≤ ζ/2 or so) J itself goes on along the lifted line. Where the loop round the branch
 * point k1 is worth less than e^{−32}, the rays leave already at 2 k0; the lower one then passes k1 on the left, and meets
 * the cut Im λ² = Im k1² at a depth below |Im k1|, where e^{−tR} is less than e^{−32} too, so nothing is lost by using
 * the principal root throughout.
 * Panels are as long as they may be: twice their distance from the nearest singularity, eight radians of phase.
 *
 * @param order points per panel
 * @returns nodes and weights, the ½ of the two halves in the weights
 */
export function spectralPath(place: Placement, patch: Patch, order: number): SpectralPath {
  const { k0, k1Re, k1Im } = place.halfSpace;
  const { rho0, rho1, zeta0, zeta1 } = patch;
  const path: SpectralPath = {
    count: 0,
    data: new Float64Array(4 * 512),
    kind: new Uint8Array(512),
  };
  const rule = gaussLegendre(order);
  const lift = rho1 > 0 ? Math.min(0.6 * k0, 4 / rho1) : 0.6 * k0;

  const add = (
    fromRe: number,
    fromIm: number,
    toRe: number,
    toIm: number,
    kind: number,
    scale: number,
    reach: number,
  ): void => {
    const dRe = toRe - fromRe;
    const dIm = toIm - fromIm;
    const length = Math.sqrt(dRe * dRe + dIm * dIm);
    let away = Math.min(distance(k0, 0, fromRe, fromIm, dRe, dIm), distance(k1Re, k1Im, fromRe, fromIm, dRe, dIm));
    if (kind !== STANDING) away = Math.min(away, distance(0, 0, fromRe, fromIm, dRe, dIm));
    if (length > 2 * away || length * reach > SWING) {
      const midRe = fromRe + 0.5 * dRe;
      const midIm = fromIm + 0.5 * dIm;
      add(fromRe, fromIm, midRe, midIm, kind, scale, reach);
      add(midRe, midIm, toRe, toIm, kind, scale, reach);
      return;
    }
    if (path.count + order > path.kind.length) grow(path);
    for (let i = 0; i < order; i++) {
      const n = path.count++;
      const x = rule.node[i]!;
      const w = scale * rule.weight[i]!;
      path.data[4 * n] = fromRe + x * dRe;
      path.data[4 * n + 1] = fromIm + x * dIm;
      path.data[4 * n + 2] = w * dRe;
      path.data[4 * n + 3] = w * dIm;
      path.kind[n] = kind;
    }
  };

  // Where the lifted line ends.
  const far = 2.2 * k1Re;
  const near = 2 * k0;
  const steep = rho1 <= 1.01 * zeta0 && (rho0 < 0.2 * zeta1 || rho0 === 0);
  const reach = rho1 + zeta1;
  // Re √(k1² − k0²): what ζ adds to the decay of the loop round k1 when the decay is that of air.
  const growth = k0 * rootRe(place.halfSpace.epsRe - 1, place.halfSpace.epsIm);
  const loop = -k1Im * rho0 + (place.kind === "soil" ? 0 : growth * zeta0);
  // Where e^{−uζ} ends by itself.
  const fade = place.kRe + TAIL / zeta0;
  const turn = near < k1Re && loop >= DEEP ? near : far;
  const end = steep ? fade : Math.min(fade, turn);
  add(0, 0, lift, lift, STANDING, 1, reach);
  if (end > lift) add(lift, lift, end, lift, STANDING, 1, reach);
  if (end === fade) return path;

  // The two rays, in the direction that suits the middle of the patch.
  const rho = 0.5 * (rho0 + rho1);
  const zeta = 0.5 * (zeta0 + zeta1);
  const R = Math.sqrt(rho * rho + zeta * zeta);
  const cRe = zeta / R;
  const cIm = rho / R;
  const slowest = zeta0 * cRe + rho0 * cIm;
  const fastest = Math.sqrt(rho1 * rho1 + zeta1 * zeta1);
  const T = TAIL / slowest;
  // Geometric pieces, so that bisection starts from sensible lengths.
  for (let t = 0; t < T; ) {
    const next = Math.min(T, t + Math.max(end, t));
    add(end + t * cRe, lift + t * cIm, end + next * cRe, lift + next * cIm, FIRST, 0.5, fastest);
    add(end + t * cRe, lift - t * cIm, end + next * cRe, lift - next * cIm, SECOND, 0.5, fastest);
    t = next;
  }
  return path;
}

/** Distance of a point from the segment from → from + d. */
function distance(pRe: number, pIm: number, fromRe: number, fromIm: number, dRe: number, dIm: number): number {
  const x = pRe - fromRe;
  const y = pIm - fromIm;
  const along = (x * dRe + y * dIm) / (dRe * dRe + dIm * dIm);
  const t = Math.max(0, Math.min(1, along));
  const ex = x - t * dRe;
  const ey = y - t * dIm;
  return Math.sqrt(ex * ex + ey * ey);
}

const rootRe = (re: number, im: number) => Math.sqrt(0.5 * (Math.sqrt(re * re + im * im) + re));

function grow(path: SpectralPath): void {
  const data = new Float64Array(2 * path.data.length);
  data.set(path.data);
  path.data = data;
  const kind = new Uint8Array(2 * path.kind.length);
  kind.set(path.kind);
  path.kind = kind;
}
