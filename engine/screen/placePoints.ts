import { MU0_HPerM } from "../constants.ts";
import type { Complex, RadialScreen } from "../contract.ts";
import { gaussLegendre } from "../quad/gaussLegendre.ts";
import { cellPanels } from "./cellPanels.ts";
import type { GroundFrame } from "./frameGround.ts";
import type { Centre } from "./gatherCentres.ts";
import { sheetReactance } from "./surfaceAdmittance.ts";

/** Quadrature points on the ground in world coordinates; `re` and `im` are the weight times the surface impedance. */
export interface PlanePoints {
  count: number;
  x: Float64Array;
  y: Float64Array;
  re: Float64Array;
  im: Float64Array;
}

/** How finely the ground is covered; the defaults are the measured compromise, larger values serve as a check. */
export interface Fineness {
  /** Points per radian of direction within a panel, and the least number. */
  readonly perRadian: number;
  readonly leastAngle: number;
  /** Points per interval along a ray: least number, more per radian of phase and per e-fold of distance. */
  readonly leastRay: number;
  readonly perPhase: number;
  readonly perFold: number;
  /** Points along the complex tail. */
  readonly tail: number;
  /** Directions of the rings and the tail over half a turn: this many and 2 per radian of the array's extent. */
  readonly ringAngles: number;
}

export const usualFineness: Fineness = {
  perRadian: 4,
  leastAngle: 3,
  leastRay: 3,
  perPhase: 1,
  perFold: 1,
  tail: 6,
  ringAngles: 8,
};

/** Surface impedance of soil and radials at one place, as the loops below need it. */
interface Surface {
  readonly soil: Complex;
  readonly omegaMu: number;
  /** Radials in frame coordinates. */
  readonly screens: readonly (RadialScreen & { readonly fx: number; readonly fy: number })[];
}

/**
 * Covers the ground inside the tail radius with quadrature points.
 *
 * Each centre owns the ground nearer to it than to any other, inside the cell circle; there the points lie on rays from
 * the centre. The rays are cut where they cross an edge of radials, and the directions are cut where the pattern of cuts
 * changes, so that every piece sees a smooth integrand. From the cell circle to the tail radius there is bare soil
 * and the points lie on rings.
 *
 * @param out reused between calls; grows as needed
 */
export function placePoints(
  out: PlanePoints,
  frame: GroundFrame,
  centres: readonly Centre[],
  screens: readonly RadialScreen[],
  soil: Complex,
  omega_radPerS: number,
  k: number,
  fineness: Fineness,
): PlanePoints {
  out.count = 0;
  const surface: Surface = {
    soil,
    omegaMu: omega_radPerS * MU0_HPerM,
    screens: screens
      .filter((s) => s.count > 0 && s.length_m > 0)
      .map((s) => {
        const dx = s.x_m - frame.originX;
        const dy = s.y_m - frame.originY;
        return { ...s, fx: dx * frame.cos + dy * frame.sin, fy: dy * frame.cos - dx * frame.sin };
      }),
  };
  const cuts = new Float64Array(2 * frame.edges.length + 4);

  for (let i = 0; i < centres.length; i++) {
    const ox = frame.x[i]!;
    const oy = frame.y[i]!;
    const panels = cellPanels(frame, i);
    for (let p = 0; p + 1 < panels.length; p++) {
      const from = panels[p]!;
      const width = panels[p + 1]! - from;
      const order = frame.round ? 1 : Math.max(fineness.leastAngle, Math.ceil(fineness.perRadian * width));
      const rule = gaussLegendre(order);
      for (let q = 0; q < order; q++) {
        const phi = from + width * rule.node[q]!;
        const c = Math.cos(phi);
        const s = Math.sin(phi);
        const weight = (frame.mirrored ? 2 : 1) * width * rule.weight[q]!;
        const count = cutRay(cuts, frame, i, c, s, centres[i]!.inner_m);
        for (let j = 0; j + 1 < count; j++) {
          const mode = j > 0 ? "plain" : centres[i]!.bare && centres[i]!.inner_m > 0 ? "folds" : "square";
          addPiece(out, frame, surface, ox, oy, c, s, cuts[j]!, cuts[j + 1]!, mode, weight, k, fineness);
        }
      }
    }
  }
  addRings(out, frame, surface, k, fineness);
  return out;
}

/** Directions over half a turn that rings and tail use: equal steps, which converge fastest on a closed circle. */
export function ringDirections(frame: GroundFrame, k: number, fineness: Fineness): number {
  if (frame.round) return 1;
  let reach = 0;
  for (let i = 0; i < frame.x.length; i++) reach = Math.max(reach, Math.sqrt(frame.x[i]! ** 2 + frame.y[i]! ** 2));
  return fineness.ringAngles + Math.ceil(2 * k * reach);
}

function addRings(out: PlanePoints, frame: GroundFrame, surface: Surface, k: number, fineness: Fineness): void {
  const { cellRadius, tailRadius } = frame;
  if (!(tailRadius > cellRadius * (1 + 1e-9))) return;
  const half = ringDirections(frame, k, fineness);
  const directions = frame.mirrored ? half : 2 * half;
  const step = (frame.mirrored ? Math.PI : 2 * Math.PI) / directions;
  for (let q = 0; q < directions; q++) {
    const phi = (q + 0.5) * step;
    const weight = (frame.mirrored ? 2 : 1) * step;
    addPiece(
      out,
      frame,
      surface,
      0,
      0,
      Math.cos(phi),
      Math.sin(phi),
      cellRadius,
      tailRadius,
      "plain",
      weight,
      k,
      fineness,
    );
  }
}

/** Distances from centre i along (c, s) at which the integrand breaks, ascending, first the inner and last the outer limit. */
function cutRay(cuts: Float64Array, frame: GroundFrame, i: number, c: number, s: number, inner: number): number {
  const ox = frame.x[i]!;
  const oy = frame.y[i]!;
  // Out to the cell circle, or to the line half-way to a neighbour.
  const b = -(ox * c + oy * s);
  let outer = b + Math.sqrt(b * b - (ox * ox + oy * oy) + frame.cellRadius * frame.cellRadius);
  for (let j = 0; j < frame.x.length; j++) {
    if (j === i) continue;
    const dx = frame.x[j]! - ox;
    const dy = frame.y[j]! - oy;
    const towards = dx * c + dy * s;
    if (towards > 0) outer = Math.min(outer, (dx * dx + dy * dy) / (2 * towards));
  }
  if (!(outer > inner)) return 0;
  let count = 0;
  cuts[count++] = inner;
  for (const edge of frame.edges) {
    const dx = edge.x - ox;
    const dy = edge.y - oy;
    const along = dx * c + dy * s;
    const under = along * along - (dx * dx + dy * dy) + edge.radius * edge.radius;
    if (!(under > 0)) continue;
    const root = Math.sqrt(under);
    for (let sign = -1; sign <= 1; sign += 2) {
      const r = along + sign * root;
      if (!(r > inner && r < outer)) continue;
      // Insert in order.
      let at = count++;
      while (cuts[at - 1]! > r) {
        cuts[at] = cuts[at - 1]!;
        at--;
      }
      cuts[at] = r;
    }
  }
  cuts[count++] = outer;
  return count;
}

/** Points on one smooth piece of a ray from (ox, oy), between distances from and to. */
function addPiece(
  out: PlanePoints,
  frame: GroundFrame,
  surface: Surface,
  ox: number,
  oy: number,
  c: number,
  s: number,
  from: number,
  to: number,
  mode: "plain" | "square" | "folds",
  weight: number,
  k: number,
  fineness: Fineness,
): void {
  const length = to - from;
  if (!(length > 0)) return;
  // Near a centre the integrand times ρ still varies with ln ρ; the square mapping copes with any number of folds.
  const folds = mode === "square" ? 2 : Math.log(to / from);
  const order = Math.min(
    40,
    Math.max(1, Math.ceil(fineness.leastRay + fineness.perPhase * k * length + fineness.perFold * folds)),
  );
  const rule = gaussLegendre(order);
  reserve(out, order);
  for (let q = 0; q < order; q++) {
    const t = rule.node[q]!;
    let r: number;
    let dr: number;
    if (mode === "plain") {
      r = from + length * t;
      dr = length;
    } else if (mode === "square") {
      r = from + length * t * t;
      dr = 2 * length * t;
    } else {
      r = from * Math.exp(folds * t);
      dr = r * folds;
    }
    const fx = ox + r * c;
    const fy = oy + r * s;

    // Admittances of soil and radials side by side.
    let im = surface.soil.im;
    let perfect = false;
    for (const screen of surface.screens) {
      const rho = Math.sqrt((fx - screen.fx) ** 2 + (fy - screen.fy) ** 2);
      if (rho >= screen.length_m) continue;
      const reactance = sheetReactance(surface.omegaMu, screen.count, screen.radius_m, rho);
      if (!(reactance > 0)) perfect = true;
      else im -= 1 / reactance;
    }
    if (perfect) continue;
    const re = surface.soil.re;
    const f = (weight * rule.weight[q]! * dr * r) / (re * re + im * im);
    const at = out.count++;
    out.x[at] = frame.originX + fx * frame.cos - fy * frame.sin;
    out.y[at] = frame.originY + fx * frame.sin + fy * frame.cos;
    out.re[at] = f * re;
    out.im[at] = -f * im;
  }
}

function reserve(out: PlanePoints, more: number): void {
  if (out.count + more <= out.x.length) return;
  const grow = (old: Float64Array) => {
    const larger = new Float64Array(2 * (out.count + more) + 1024);
    larger.set(old);
    return larger;
  };
  out.x = grow(out.x);
  out.y = grow(out.y);
  out.re = grow(out.re);
  out.im = grow(out.im);
}
