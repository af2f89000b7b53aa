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
  /** 1 where the root √(λ² − k1²) has to be taken with Re < 0: the other side of its cut. */
  otherSide: Uint8Array;
}

/** Exponent at which what is left of a decaying tail is dropped: e^{−37} = 1e-16. */
const TAIL = 37;
/** Exponent at which the loop round k1 is dropped. */
const DEEP = 32;
/** Length of oscillating line, in radians, that is worth a way round the cut. */
const LONG = 40;
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
 * Over patches that lie steeply (ρ ≤ ζ/2 or so) J itself goes on along the lifted line. λa is 2.2 Re k1, or 2 k0 where
 * that saves much of a long oscillating line. The lower ray then passes k1 on the left, and the cut from k1, laid along
 * the ray's direction, is gone round as well: ∫ [F(u1) − F(−u1)] dλ down the cut, with λ = k1 + σ² (ζc − jρc)/Rc because F
 * starts as a root. The loop is left out where it is worth less than e^{−32}; and where the ray passes k1 on the right there
 * is none. In soil, where −u1 would stand in the exponent, only the ray's own crossing of the principal cut is left,
 * deeper than |Im k1| and so below e^{−32} too.
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
    otherSide: new Uint8Array(512),
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
      // Below the hyperbola Im λ² = Im k1² the continued root is not the principal one.
      const below = continued && kind === SECOND && path.data[4 * n]! * path.data[4 * n + 1]! < k1Re * k1Im;
      path.otherSide[n] = below ? 1 : 0;
    }
  };

  let continued = false;

  // Where the lifted line ends.
  const far = 2.2 * k1Re;
  const near = 2 * k0;
  const steep = rho1 <= 1.01 * zeta0 && (rho0 < 0.2 * zeta1 || rho0 === 0);
  const reach = rho1 + zeta1;
  // The direction of the two rays, which suits the middle of the patch.
  const rho = 0.5 * (rho0 + rho1);
  const zeta = 0.5 * (zeta0 + zeta1);
  const R = Math.sqrt(rho * rho + zeta * zeta);
  const cRe = zeta / R;
  const cIm = rho / R;
  const slowest = zeta0 * cRe + rho0 * cIm;
  const fastest = Math.sqrt(rho1 * rho1 + zeta1 * zeta1);
  const T = TAIL / slowest;

  // How far left of k1 the lower ray from 2 k0 passes (right of it, if negative).
  const gap = k1Re - near;
  const clear = gap * cIm - (lift - k1Im) * cRe;
  // −u1 grows along the cut where it stands in the exponent: then only far from the sources, or not at all.
  const bothSides = place.kind === "air" || (place.kind === "across" && slowest > 10 * place.depth_m);
  // What the loop round k1 is worth: e^{−loop}. Re √(k1² − k0²) is what ζ adds while the decay is that of air.
  const growth = k0 * rootRe(place.halfSpace.epsRe - 1, place.halfSpace.epsIm);
  const loop = -k1Im * rho0 + (bothSides ? growth * zeta0 : 0);
  const early =
    !steep &&
    gap > 0 &&
    (clear < -0.3 * gap || loop >= DEEP || (bothSides && clear > 0.3 * gap && (far - near) * reach > LONG));
  continued = early && bothSides && clear > 0;
  // Where e^{−uζ} ends by itself.
  const fade = place.kRe + TAIL / zeta0;
  const turn = early ? near : far;
  const end = steep ? fade : Math.min(fade, turn);
  add(0, 0, lift, lift, STANDING, 1, reach);
  if (end > lift) add(lift, lift, end, lift, STANDING, 1, reach);
  if (end === fade) return path;

  // Geometric pieces, so that bisection starts from sensible lengths.
  for (let t = 0; t < T; ) {
    const next = Math.min(T, t + Math.max(end, t));
    add(end + t * cRe, lift + t * cIm, end + next * cRe, lift + next * cIm, FIRST, 0.5, fastest);
    add(end + t * cRe, lift - t * cIm, end + next * cRe, lift - next * cIm, SECOND, 0.5, fastest);
    t = next;
  }
  if (continued && loop < DEEP)
    goRoundCut(path, rule.node, rule.weight, k1Re, k1Im, cRe, -cIm, slowest, fastest, TAIL - loop);
  return path;
}

/** Adds ½ ∫ [F(u1) − F(−u1)] H⁽²⁾ dλ from k1 outwards in the direction c. */
function goRoundCut(
  path: SpectralPath,
  node: Float64Array,
  weight: Float64Array,
  k1Re: number,
  k1Im: number,
  cRe: number,
  cIm: number,
  slowest: number,
  fastest: number,
  exponent: number,
): void {
  // λ = k1 + σ² c: the integrand is e^{−σ²R} times what is smooth in σ.
  const top = Math.sqrt(exponent / slowest);
  const panels = Math.ceil(0.45 * top * Math.sqrt(fastest));
  const width = top / panels;
  for (let p = 0; p < panels; p++) {
    for (let i = 0; i < node.length; i++) {
      const sigma = (p + node[i]!) * width;
      const w = sigma * weight[i]! * width;
      for (let side = 0; side < 2; side++) {
        if (path.count === path.kind.length) grow(path);
        const n = path.count++;
        path.data[4 * n] = k1Re + sigma * sigma * cRe;
        path.data[4 * n + 1] = k1Im + sigma * sigma * cIm;
        path.data[4 * n + 2] = side === 0 ? w * cRe : -w * cRe;
        path.data[4 * n + 3] = side === 0 ? w * cIm : -w * cIm;
        path.kind[n] = SECOND;
        path.otherSide[n] = side;
      }
    }
  }
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
  const otherSide = new Uint8Array(2 * path.otherSide.length);
  otherSide.set(path.otherSide);
  path.otherSide = otherSide;
}
