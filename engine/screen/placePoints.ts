import { MU0_HPerM } from "../constants.ts";
import type { Complex, RadialScreen } from "../contract.ts";
import { gaussLegendre } from "../quad/gaussLegendre.ts";
import { cellPanels } from "./cellPanels.ts";
import { cutRay } from "./cutRay.ts";
import type { Fineness } from "./Fineness.ts";
import type { GroundFrame } from "./frameGround.ts";
import type { Centre } from "./gatherCentres.ts";
import { type RadialScales, radialScales } from "./radialScales.ts";
import { ringDirections } from "./ringDirections.ts";
import { sheetReactance } from "./surfaceAdmittance.ts";

/** Quadrature points on the ground in world coordinates; `re` and `im` are the weight times the surface impedance. */
export interface PlanePoints {
  count: number;
  x: Float64Array;
  y: Float64Array;
  re: Float64Array;
  im: Float64Array;
}

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
  const cuts = new Float64Array(2 * frame.edges.length + 6);

  for (let i = 0; i < centres.length; i++) {
    const ox = frame.x[i]!;
    const oy = frame.y[i]!;
    const panels = cellPanels(frame, i);
    const scales = radialScales(centres[i]!, screens, soil, surface.omegaMu, k);
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
        const count = cutRay(cuts, frame, i, c, s, centres[i]!.inner_m, scales);
        for (let j = 0; j + 1 < count; j++) {
          const mode = pieceMode(centres[i]!, j === 0, cuts[j + 1]!, scales);
          addPiece(out, frame, surface, ox, oy, c, s, cuts[j]!, cuts[j + 1]!, mode, weight, k, fineness);
        }
      }
    }
  }
  addRings(out, frame, surface, k, fineness);
  return out;
}

/** How the points of a piece are spread: its first one may start where Z_s is zero or where 1/ρ is largest. */
function pieceMode(centre: Centre, first: boolean, to: number, scales: RadialScales): PieceMode {
  if (first && !(centre.bare && centre.inner_m > 0)) return "square";
  return Number.isFinite(scales.wave) && to <= scales.wave ? "folds" : "plain";
}

/** "plain": evenly; "square": thinning out as the square, from a zero; "folds": evenly in ln ρ. */
type PieceMode = "plain" | "square" | "folds";

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
  mode: PieceMode,
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
