import type { Complex } from "../contract.ts";
import { gaussLaguerre } from "../quad/gaussLaguerre.ts";
import { COS_TABLE, SIN_TABLE, STEP_RAD, STEPS_PER_RAD } from "../special/expTable.ts";
import { addProducts } from "./addProducts.ts";
import { addSlopingField, type GroundPoint } from "./addSlopingField.ts";
import type { Fineness } from "./Fineness.ts";
import type { GroundFrame } from "./frameGround.ts";
import { ringDirections } from "./ringDirections.ts";
import type { ScreenInput } from "./ScreenInput.ts";
import type { UprightField } from "./uprightField.ts";

/** Nodes of a line that serve the tail in place of its own: Lagrange points over the squares of the heights. */
const TAIL_NODES = 6;

/**
 * Adds the bare soil from the tail radius to infinity, ∬ H_m·H_n dS.
 *
 * Along the ground H_m·H_n falls only as e^{−2jkρ}/ρ². Every factor is analytic in ρ, so the path leaves the tail
 * radius straight down the complex plane, ρ = ρ₀ − jx/2k, where e^{−2jkρ} becomes e^{−x} and a few Laguerre points suffice.
 *
 * @param dz S × S complex, added to (upper triangle only)
 */
export function addTail(
  dz: Float64Array,
  frame: GroundFrame,
  input: ScreenInput,
  fields: readonly UprightField[],
  soil: Complex,
  fineness: Fineness,
): void {
  const { k_radPerM: k, states } = input;
  const far = fields.map((field) => thinOut(field, states));
  const rule = gaussLaguerre(fineness.tail);
  const half = ringDirections(frame, k, fineness);
  const directions = frame.mirrored ? half : 2 * half;
  const step = (frame.mirrored ? Math.PI : 2 * Math.PI) / directions;
  const admittance2 = soil.re * soil.re + soil.im * soil.im;
  const zRe = soil.re / admittance2;
  const zIm = -soil.im / admittance2;
  const h = new Float64Array(4 * states);
  const point: GroundPoint = { xRe: 0, xIm: 0, yRe: 0, yIm: 0 };

  for (let q = 0; q < directions; q++) {
    const phi = (q + 0.5) * step;
    const c = Math.cos(phi);
    const s = Math.sin(phi);
    const ux = frame.cos * c - frame.sin * s;
    const uy = frame.sin * c + frame.cos * s;
    for (let p = 0; p < rule.node.length; p++) {
      const x = rule.node[p]!;
      const down = -x / (2 * k);
      point.xRe = frame.originX + frame.tailRadius * ux;
      point.xIm = down * ux;
      point.yRe = frame.originY + frame.tailRadius * uy;
      point.yIm = down * uy;
      h.fill(0);
      for (const line of far) addUpright(h, line, k, states, point);
      if (input.sloping) addSlopingField(h, input.sloping, k, states, point);

      // Weight e^x w · ρ dρ = −j/2k (ρ₀ − jx/2k) · angle · Z.
      const w = ((frame.mirrored ? 2 : 1) * step * rule.weight[p]! * Math.exp(x)) / (2 * k);
      const aRe = w * down;
      const aIm = -w * frame.tailRadius;
      addProducts(dz, h, states, aRe * zRe - aIm * zIm, aRe * zIm + aIm * zRe);
    }
  }
}

/**
 * Moves the coefficients of many nodes onto a few: e^{−jkR} as a function of z² is smooth when ρ is not below the height,
 * so its values at the nodes follow from TAIL_NODES Chebyshev points (measured: 1e-5 of the far field).
 */
function thinOut(field: UprightField, states: number): UprightField {
  const nodes = field.z2.length;
  if (nodes <= TAIL_NODES) return field;
  const top = field.z2[nodes - 1]!;
  const z2 = new Float64Array(TAIL_NODES);
  for (let a = 0; a < TAIL_NODES; a++) z2[a] = 0.5 * top * (1 - Math.cos((Math.PI * (a + 0.5)) / TAIL_NODES));
  const c = new Float64Array(2 * states * TAIL_NODES);
  const d = new Float64Array(2 * states * TAIL_NODES);
  for (let n = 0; n < nodes; n++)
    for (let a = 0; a < TAIL_NODES; a++) {
      let share = 1;
      for (let b = 0; b < TAIL_NODES; b++) if (b !== a) share *= (field.z2[n]! - z2[b]!) / (z2[a]! - z2[b]!);
      for (let s = 0; s < states; s++)
        for (let part = 0; part < 2; part++) {
          const from = 2 * (s * nodes + n) + part;
          const to = 2 * (s * TAIL_NODES + a) + part;
          c[to] = c[to]! + share * field.c[from]!;
          d[to] = d[to]! + share * field.d[from]!;
        }
    }
  return { ...field, z2, c, d };
}

/** Adds an upright line's Hx and Hy at a point with complex coordinates. */
function addUpright(h: Float64Array, field: UprightField, k: number, states: number, point: GroundPoint): void {
  const { z2, c, d, floats } = field;
  const nodes = z2.length;
  const xRe = point.xRe - field.x_m;
  const yRe = point.yRe - field.y_m;
  const { xIm, yIm } = point;
  const rho2Re = xRe * xRe - xIm * xIm + yRe * yRe - yIm * yIm;
  const rho2Im = 2 * (xRe * xIm + yRe * yIm);
  // H = (−y, x) ρH_φ/ρ².
  const g = 1 / (rho2Re * rho2Re + rho2Im * rho2Im);
  const uxRe = -g * (yRe * rho2Re + yIm * rho2Im);
  const uxIm = -g * (yIm * rho2Re - yRe * rho2Im);
  const uyRe = g * (xRe * rho2Re + xIm * rho2Im);
  const uyIm = g * (xIm * rho2Re - xRe * rho2Im);
  for (let n = 0; n < nodes; n++) {
    const sRe = rho2Re + z2[n]!;
    const size = Math.sqrt(sRe * sRe + rho2Im * rho2Im);
    // √ with the real part positive; cancellation is harmless, as the imaginary part never vanishes out here.
    const RRe = Math.sqrt(0.5 * (size + sRe));
    const RIm = (0.5 * rho2Im) / RRe;
    const fade = Math.exp(k * RIm);
    const x = k * RRe;
    const i = Math.floor(x * STEPS_PER_RAD + 0.5);
    const r = x - i * STEP_RAD;
    const r2 = r * r;
    const tc = COS_TABLE[i & 1023]!;
    const ts = SIN_TABLE[i & 1023]!;
    const sr = r * (1 - r2 * (1 / 6 - r2 * (1 / 120)));
    const cr = 1 - r2 * (0.5 - r2 * (1 / 24));
    const eRe = fade * (tc * cr - ts * sr);
    const eIm = -fade * (ts * cr + tc * sr);
    const iRe = floats ? RRe / size : 0;
    const iIm = floats ? -RIm / size : 0;
    for (let s = 0, p = 2 * n; s < states; s++, p += 2 * nodes) {
      const qRe = c[p]! + d[p]! * iRe - d[p + 1]! * iIm;
      const qIm = c[p + 1]! + d[p]! * iIm + d[p + 1]! * iRe;
      const vRe = qRe * eRe - qIm * eIm;
      const vIm = qRe * eIm + qIm * eRe;
      h[4 * s] = h[4 * s]! + vRe * uxRe - vIm * uxIm;
      h[4 * s + 1] = h[4 * s + 1]! + vRe * uxIm + vIm * uxRe;
      h[4 * s + 2] = h[4 * s + 2]! + vRe * uyRe - vIm * uyIm;
      h[4 * s + 3] = h[4 * s + 3]! + vRe * uyIm + vIm * uyRe;
    }
  }
}
