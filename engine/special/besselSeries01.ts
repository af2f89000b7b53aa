/**
 * Power series of J₀ and J₁ at complex z, and the companion sums that make Y₀ and Y₁ of them:
 *
 *   J₀ = Σ (−q)ᵏ/k!²              J₁ = (z/2) Σ (−q)ᵏ/(k!(k+1)!)             q = z²/4
 *   A  = Σ (−q)ᵏ Hₖ/k!²           B  = (z/2) Σ (−q)ᵏ (Hₖ + Hₖ₊₁)/(k!(k+1)!)   Hₖ = 1 + ½ + … + 1/k
 *   Y₀ = (2/π)[(ln(z/2) + γ) J₀ − A],   Y₁ = (2/π)[(ln(z/2) + γ) J₁ − 1/z − ½B]
 *
 * Rounding: 2e-16 e^{|z| − |Im z|} of |J|, so about 4e-13 for |z| − |Im z| ≤ 8.
 *
 * @param out 8 numbers, written: Re, Im of J₀, J₁, A, B
 * @returns out
 * Source: Abramowitz & Stegun 9.1.10, 9.1.11, 9.1.13 (numbers from memory; values tested against independent integrals)
 */
export function besselSeries01(out: Float64Array, zr: number, zi: number): Float64Array {
  const hr = 0.5 * zr;
  const hi = 0.5 * zi;
  const qr = hi * hi - hr * hr;
  const qi = -2 * hr * hi;
  // t = (−q)ᵏ/k!²; the J₁ term is t/(k + 1).
  let tr = 1;
  let ti = 0;
  let harmonic = 0;
  let j0r = 1;
  let j0i = 0;
  let j1r = 1;
  let j1i = 0;
  let ar = 0;
  let ai = 0;
  let br = 1;
  let bi = 0;
  const most = 30 + 2 * Math.sqrt(zr * zr + zi * zi);
  for (let k = 1; k < most; k++) {
    const s = 1 / (k * k);
    const nr = s * (tr * qr - ti * qi);
    ti = s * (tr * qi + ti * qr);
    tr = nr;
    harmonic += 1 / k;
    const f = 1 / (k + 1);
    const both = f * (2 * harmonic + f);
    j0r += tr;
    j0i += ti;
    j1r += f * tr;
    j1i += f * ti;
    ar += harmonic * tr;
    ai += harmonic * ti;
    br += both * tr;
    bi += both * ti;
    // Written so that a NaN stops it too.
    const goesOn = Math.abs(tr) + Math.abs(ti) > 1e-18 * (Math.abs(j0r) + Math.abs(j0i));
    if (!goesOn) break;
  }
  out[0] = j0r;
  out[1] = j0i;
  out[2] = hr * j1r - hi * j1i;
  out[3] = hr * j1i + hi * j1r;
  out[4] = ar;
  out[5] = ai;
  out[6] = hr * br - hi * bi;
  out[7] = hr * bi + hi * br;
  return out;
}
