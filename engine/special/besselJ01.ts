import { besselSeries01 } from "./besselSeries01.ts";
import { macdonald01 } from "./macdonald01.ts";

/** Up to this |z| − |Im z| the power series serves; beyond it the two travelling waves, J = ½(H⁽¹⁾ + H⁽²⁾). */
export const BESSEL_J_SWITCH = 8;

const series = new Float64Array(8);
const up = new Float64Array(4);
const down = new Float64Array(4);

/**
 * Writes J₀(z) and J₁(z) for complex z with Re z ≥ 0: out = Re J₀, Im J₀, Re J₁, Im J₁.
 *
 * Accuracy: 1e-12 of the larger of |J₀| and |J₁| (so absolute near a zero of one of them), for |Im z| ≤ 700;
 *   tested against the integral (1/π) ∫ cos(z sin t − nt) dt and on both sides of the switch.
 * @returns out
 */
export function besselJ01(out: Float64Array, zr: number, zi: number): Float64Array {
  const size = Math.sqrt(zr * zr + zi * zi);
  if (!(size - Math.abs(zi) > BESSEL_J_SWITCH)) {
    besselSeries01(series, zr, zi);
    out[0] = series[0]!;
    out[1] = series[1]!;
    out[2] = series[2]!;
    out[3] = series[3]!;
    return out;
  }
  // H⁽¹⁾_ν(z) = √(2/πz) e^{j(z − νπ/2 − π/4)} f_ν(−jz), H⁽²⁾ the same with −j.
  macdonald01(up, zi, -zr);
  macdonald01(down, -zi, zr);
  const c = Math.cos(zr);
  const s = Math.sin(zr);
  const grow = Math.exp(zi);
  const shrink = 1 / grow;
  // e^{j(z − π/4)} = shrink (c + js)(1 − j)/√2 and e^{−j(z − π/4)} = grow (c − js)(1 + j)/√2; ½·1/√2 goes into the root.
  const ur = shrink * (c + s);
  const ui = shrink * (s - c);
  const dr = grow * (c + s);
  const di = grow * (c - s);
  // √(2/πz)/(2√2) = 1/(2√(πz)), principal root.
  const half = Math.sqrt(0.5 * (size + zr));
  const f = 1 / (2 * Math.sqrt(Math.PI) * size);
  const rr = f * half;
  const ri = (-f * zi) / (2 * half);
  const p0r = ur * up[0]! - ui * up[1]!;
  const p0i = ur * up[1]! + ui * up[0]!;
  const q0r = dr * down[0]! - di * down[1]!;
  const q0i = dr * down[1]! + di * down[0]!;
  const p1r = ur * up[2]! - ui * up[3]!;
  const p1i = ur * up[3]! + ui * up[2]!;
  const q1r = dr * down[2]! - di * down[3]!;
  const q1i = dr * down[3]! + di * down[2]!;
  const s0r = p0r + q0r;
  const s0i = p0i + q0i;
  // Order 1: −j for the first, +j for the second.
  const s1r = p1i - q1i;
  const s1i = q1r - p1r;
  out[0] = rr * s0r - ri * s0i;
  out[1] = rr * s0i + ri * s0r;
  out[2] = rr * s1r - ri * s1i;
  out[3] = rr * s1i + ri * s1r;
  return out;
}
