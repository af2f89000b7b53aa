import { besselJ01 } from "./besselJ01.ts";
import { besselSeries01 } from "./besselSeries01.ts";
import { macdonald01 } from "./macdonald01.ts";

/** Below this |z| the power series serves. */
export const HANKEL_SWITCH = 3.5;

const EULER = 0.5772156649015329;
const series = new Float64Array(8);
const scaled = new Float64Array(4);

/**
 * Writes H₀⁽¹⁾(z) and H₁⁽¹⁾(z) for complex z ≠ 0 with Re z ≥ 0: out = Re, Im of order 0, Re, Im of order 1.
 *
 *   |z| < 3.5:           J + jY from power series
 *   Im z ≥ 0:            √(2/πz) e^{j(z − νπ/2 − π/4)} f_ν(−jz), f_ν from `macdonald01`
 *   Im z < 0:            2J − H⁽²⁾, where H⁽²⁾ is the small one, so nothing cancels
 *
 * Accuracy: 2e-12 relative; tested against K_ν(w) = ∫₀^∞ e^{−w cosh t} cosh νt dt with w = −jz and by the Wronskian.
 * @returns out; infinite or NaN at z = 0
 */
export function hankelFirst01(out: Float64Array, zr: number, zi: number): Float64Array {
  const size = Math.sqrt(zr * zr + zi * zi);
  if (size < HANKEL_SWITCH) {
    besselSeries01(series, zr, zi);
    const j0r = series[0]!;
    const j0i = series[1]!;
    const j1r = series[2]!;
    const j1i = series[3]!;
    const two = 2 / Math.PI;
    const lr = Math.log(0.5 * size) + EULER;
    const li = Math.atan2(zi, zr);
    const y0r = two * (lr * j0r - li * j0i - series[4]!);
    const y0i = two * (lr * j0i + li * j0r - series[5]!);
    const inverse = 1 / (size * size);
    const y1r = two * (lr * j1r - li * j1i - inverse * zr - 0.5 * series[6]!);
    const y1i = two * (lr * j1i + li * j1r + inverse * zi - 0.5 * series[7]!);
    out[0] = j0r - y0i;
    out[1] = j0i + y0r;
    out[2] = j1r - y1i;
    out[3] = j1i + y1r;
    return out;
  }
  if (zi < 0) {
    travelling(out, zr, -zi, size);
    const h0r = out[0]!;
    const h0i = -out[1]!;
    const h1r = out[2]!;
    const h1i = -out[3]!;
    besselJ01(out, zr, zi);
    out[0] = 2 * out[0]! - h0r;
    out[1] = 2 * out[1]! - h0i;
    out[2] = 2 * out[2]! - h1r;
    out[3] = 2 * out[3]! - h1i;
    return out;
  }
  return travelling(out, zr, zi, size);
}

function travelling(out: Float64Array, zr: number, zi: number, size: number): Float64Array {
  macdonald01(scaled, zi, -zr);
  const c = Math.cos(zr);
  const s = Math.sin(zr);
  const shrink = Math.exp(-zi) / Math.sqrt(Math.PI);
  // √(2/πz) e^{j(z − π/4)} = [shrink (c + js)(1 − j)] / √z
  const er = shrink * (c + s);
  const ei = shrink * (s - c);
  const half = Math.sqrt(0.5 * (size + zr));
  const rr = half / size;
  const ri = -zi / (2 * half * size);
  const fr = er * rr - ei * ri;
  const fi = er * ri + ei * rr;
  const a = scaled[0]!;
  const b = scaled[1]!;
  const p = scaled[2]!;
  const q = scaled[3]!;
  out[0] = fr * a - fi * b;
  out[1] = fr * b + fi * a;
  // Order 1 carries e^{−jπ/2} = −j.
  out[2] = fr * q + fi * p;
  out[3] = fi * q - fr * p;
  return out;
}
