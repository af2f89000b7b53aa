import type { QuadratureRule } from "./gaussLegendre.ts";

const rules = new Map<number, QuadratureRule>();

/**
 * The n-point Gauss–Laguerre rule: ∫₀^∞ e^{−x} f(x) dx ≈ Σ wᵢ f(xᵢ), exact for polynomials up to degree 2n − 1.
 *
 * Roots of Lₙ by Newton's method, smallest first, those already found divided out; wᵢ = xᵢ/((n + 1) Lₙ₊₁(xᵢ))².
 * Rules are kept; do not write to the arrays.
 *
 * Accuracy: 1e-13 relative for n ≤ 24.
 * @throws RangeError when n is not a whole number from 1 to 24
 */
export function gaussLaguerre(n: number): QuadratureRule {
  const kept = rules.get(n);
  if (kept) return kept;
  if (!(Number.isInteger(n) && n >= 1 && n <= 24)) throw new RangeError(`gaussLaguerre: n = ${n} is not 1..24`);
  const node = new Float64Array(n);
  const weight = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    // From left of the wanted root Newton's method on the deflated polynomial climbs to it without jumping over.
    let x = i === 0 ? 0 : node[i - 1]! * (1 + 1e-6);
    for (let round = 0; round < 200; round++) {
      const { value, slope } = laguerre(n, x);
      let pull = slope / value;
      for (let j = 0; j < i; j++) pull -= 1 / (x - node[j]!);
      const step = 1 / pull;
      x -= step;
      if (Math.abs(step) < 1e-12 * x) break;
    }
    for (let polish = 0; polish < 2; polish++) {
      const { value, slope } = laguerre(n, x);
      x -= value / slope;
    }
    node[i] = x;
    const next = laguerre(n + 1, x).value;
    weight[i] = x / ((n + 1) * next) ** 2;
  }
  const rule = { node, weight };
  rules.set(n, rule);
  return rule;
}

function laguerre(n: number, x: number): { value: number; slope: number } {
  let value = 1;
  let last = 0;
  for (let k = 0; k < n; k++) {
    const next = ((2 * k + 1 - x) * value - k * last) / (k + 1);
    last = value;
    value = next;
  }
  // x Lₙ′ = n (Lₙ − Lₙ₋₁); at 0 the slope is −n.
  return { value, slope: x === 0 ? -n : (n * (value - last)) / x };
}
