import { addProducts } from "./addProducts.ts";
import { addSlopingField, type GroundPoint } from "./addSlopingField.ts";
import { addTail } from "./addTail.ts";
import { type Fineness, usualFineness } from "./Fineness.ts";
import { frameGround, type GroundFrame } from "./frameGround.ts";
import { gatherCentres } from "./gatherCentres.ts";
import { type PlanePoints, placePoints } from "./placePoints.ts";
import type { ScreenInput } from "./ScreenInput.ts";
import { soilAdmittance } from "./surfaceAdmittance.ts";
import { tabulateUpright, type UprightTable } from "./tabulateUpright.ts";
import { uprightField } from "./uprightField.ts";

/** Room for the quadrature points, kept between calls: a fresh allocation would cost a tenth of the whole. */
const points: PlanePoints = {
  count: 0,
  x: new Float64Array(4096),
  y: new Float64Array(4096),
  re: new Float64Array(4096),
  im: new Float64Array(4096),
};

/**
 * What soil and radials add to the impedances between the states of an antenna over perfect ground, to first order, by
 * the compensation theorem:
 *
 *   dZ_mn = 1/(I_m I_n) ∬ Z_s H_m·H_n dS        over the plane z = 0, no conjugate
 *
 * H_m is the tangential magnetic field on perfect ground when state m flows. Z_s is the surface impedance of the soil,
 * in parallel with the sheet reactance of each set of radials inside its circle (admittances of overlapping circles
 * add), and zero where the radials stand closer than their own circumference, ρ < N a. Where there are no
 * radials the soil begins at the conductor's skin and dZ grows as the logarithm of its radius: such an answer is soft.
 *
 * Not in it: end effects and line resonances of the radials, radiation by their currents, second order in Z_s.
 *
 * Shapes: S states of one ampere each; see `ScreenInput`.
 *
 * Accuracy of the integration, over the largest |dZ|, against a covering three times as fine (which agrees with an
 * independent sum over a million points to 3e-5; 100 random layouts each, 60 for one element, five soils to sea water,
 * 2…120 radials of 1/16…1/2 wavelength, elements 0.05 wavelength apart or more):
 *
 *   elements   median   95 %     worst
 *      1       1.4e-5   1.2e-4   4.5e-4
 *      2       2.7e-5   2.1e-4   2.8e-4
 *      3       3.0e-5   1.7e-4   7.6e-4
 *      4       3.2e-5   3.3e-4   6.8e-4
 *
 * The model itself is a preview: tens of ohm off with few radials or short ones close above soil.
 * Source: G. H. Monteath, Proc. IEE 98 part IV, 1951; J. R. Wait and W. A. Pope, 1954 and 1955; cited from memory.
 *
 * @returns S × S complex, row-major, interleaved, symmetric [ohm]
 * @throws RangeError when a current array does not fit its nodes
 */
export function screenCorrection(input: ScreenInput, fineness: Fineness = usualFineness): Float64Array {
  const { k_radPerM: k, omega_radPerS, states, lines, sloping } = input;
  for (const line of lines)
    if (line.current.length !== 2 * states * line.z_m.length)
      throw new RangeError(
        `screenCorrection: ${line.current.length} numbers for ${states} states of ${line.z_m.length} nodes`,
      );
  if (sloping && sloping.current.length !== 4 * states * sloping.radius_m.length)
    throw new RangeError(
      `screenCorrection: ${sloping.current.length} numbers for ${states} states of ${sloping.radius_m.length} pieces`,
    );

  const dz = new Float64Array(2 * states * states);
  const soil = soilAdmittance(omega_radPerS, input.ground);
  const centres = gatherCentres(input);
  const frame = frameGround(input, centres);
  const fields = lines.map((line) => uprightField(line, k, states));

  placePoints(points, frame, centres, input.screens, soil, omega_radPerS, k, fineness);
  const tables = fields.map((field) => tabulateUpright(field, k, states, reachOf(frame, field.x_m, field.y_m)));
  addPoints(dz, tables, input);
  addTail(dz, frame, input, fields, soil, fineness);

  for (let m = 0; m < states; m++)
    for (let n = 0; n < m; n++)
      for (let part = 0; part < 2; part++) dz[2 * (m * states + n) + part] = dz[2 * (n * states + m) + part]!;
  return dz;
}

/** Largest distance of any quadrature point from a place, with a little to spare for rounding. */
function reachOf(frame: GroundFrame, x_m: number, y_m: number): number {
  const away = Math.sqrt((x_m - frame.originX) ** 2 + (y_m - frame.originY) ** 2);
  return (frame.tailRadius + away) * (1 + 1e-6);
}

/** Adds weight · H_m·H_n over the real points, fields read from the tables. */
function addPoints(dz: Float64Array, tables: readonly UprightTable[], input: ScreenInput): void {
  const { states, k_radPerM: k, sloping } = input;
  const h = new Float64Array(4 * states);
  const point: GroundPoint = { xRe: 0, xIm: 0, yRe: 0, yIm: 0 };
  const stride = 2 * states;
  for (let p = 0; p < points.count; p++) {
    const px = points.x[p]!;
    const py = points.y[p]!;
    h.fill(0);
    for (let l = 0; l < tables.length; l++) {
      const { x_m, y_m, perRoot, entries, value } = tables[l]!;
      const dx = px - x_m;
      const dy = py - y_m;
      const rho2 = dx * dx + dy * dy;
      const v = Math.sqrt(Math.sqrt(rho2)) * perRoot;
      let first = Math.floor(v) - 1;
      if (first < 0) first = 0;
      else if (first > entries - 4) first = entries - 4;
      // Lagrange through four entries; t is counted from the second.
      const t = v - first - 1;
      const inverse = 1 / rho2;
      const t1 = t + 1;
      const t2 = t - 1;
      const t3 = t - 2;
      const w0 = (-t * t2 * t3 * inverse) / 6;
      const w1 = (t1 * t2 * t3 * inverse) / 2;
      const w2 = (-t1 * t * t3 * inverse) / 2;
      const w3 = (t1 * t * t2 * inverse) / 6;
      for (let s = 0, at = stride * first; s < states; s++, at += 2) {
        const re =
          w0 * value[at]! + w1 * value[at + stride]! + w2 * value[at + 2 * stride]! + w3 * value[at + 3 * stride]!;
        const im =
          w0 * value[at + 1]! +
          w1 * value[at + stride + 1]! +
          w2 * value[at + 2 * stride + 1]! +
          w3 * value[at + 3 * stride + 1]!;
        h[4 * s] = h[4 * s]! - dy * re;
        h[4 * s + 1] = h[4 * s + 1]! - dy * im;
        h[4 * s + 2] = h[4 * s + 2]! + dx * re;
        h[4 * s + 3] = h[4 * s + 3]! + dx * im;
      }
    }
    if (sloping) {
      point.xRe = px;
      point.yRe = py;
      addSlopingField(h, sloping, k, states, point);
    }
    addProducts(dz, h, states, points.re[p]!, points.im[p]!);
  }
}
