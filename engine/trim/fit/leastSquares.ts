import { choleskyInverse } from "./choleskyInverse.ts";

export interface LeastSquaresRequest {
  /** Differences from what was observed, each over its own standard error. */
  readonly residuals: (parameters: Float64Array) => Float64Array;
  readonly start: readonly number[];
  /** A change of each parameter that matters: derivatives are taken over 1e-4 of it to either side. */
  readonly scale: readonly number[];
  /** Parameters are kept within. */
  readonly least: readonly number[];
  readonly most: readonly number[];
}

export interface LeastSquares {
  readonly parameters: Float64Array;
  /** (JᵀJ)⁻¹, row-major: variances where the residuals are in standard errors. */
  readonly covariance: Float64Array;
  readonly sumOfSquares: number;
  readonly hasConverged: boolean;
}

const STEP_PART = 1e-4;
const MOST_ROUNDS = 100;
/** Ended when a step changes the sum of squares by less than this part, and every parameter by less than that of its scale. */
const SETTLED = 1e-12;
const SETTLED_STEP = 1e-9;

/**
 * Least squares of few parameters by the method of Levenberg and Marquardt, with the diagonal of JᵀJ for its damping
 * and central differences for J.
 *
 * A parameter that a step would carry past a bound is put on it and the others are solved for anew.
 *
 * Source: D. W. Marquardt, J. SIAM 11 (1963) 431-441; J. J. Moré, Lecture Notes in Mathematics 630 (1978) 105-116, from
 * memory. Accuracy: the minimum to about 1e-8 of the scales; a local one. Undetermined parameters stay near their start
 * and make the covariance infinite.
 *
 * @throws RangeError when the lists differ in length
 */
export function leastSquares({ residuals, start, scale, least, most }: LeastSquaresRequest): LeastSquares {
  const P = start.length;
  if (scale.length !== P || least.length !== P || most.length !== P)
    throw new RangeError(
      `leastSquares: ${P} parameters, ${scale.length} scales, ${least.length} and ${most.length} bounds`,
    );
  const kept = (p: Float64Array) => p.map((v, i) => Math.min(most[i]!, Math.max(least[i]!, v)));
  let parameters: Float64Array = kept(Float64Array.from(start));
  let r = residuals(parameters);
  let sum = square(r);
  let damping = 1e-3;
  let hasConverged = false;
  let normal = normalEquations(residuals, parameters, r, scale);
  for (let round = 0; round < MOST_ROUNDS && !hasConverged; round++) {
    const damped = normal.jtj.slice();
    for (let i = 0; i < P; i++) damped[i * P + i]! *= 1 + damping;
    const next = boundedStep(damped, normal.gradient, parameters, least, most);
    if (!next) {
      damping *= 10;
      if (damping > 1e12) break;
      continue;
    }
    const tried = residuals(next);
    const reached = square(tried);
    if (reached <= sum) {
      const still = next.every((v, i) => Math.abs(v - parameters[i]!) <= SETTLED_STEP * scale[i]!);
      hasConverged = still || sum - reached <= SETTLED * sum;
      parameters = next;
      r = tried;
      sum = reached;
      damping = Math.max(damping / 10, 1e-12);
      normal = normalEquations(residuals, parameters, r, scale);
    } else {
      damping *= 10;
      // However short the step, none goes down: the bottom, as far as rounding lets it be seen.
      if (damping > 1e12) hasConverged = true;
    }
  }
  const covariance = choleskyInverse(normal.jtj, P) ?? new Float64Array(P * P).fill(Number.POSITIVE_INFINITY);
  return { parameters, covariance, sumOfSquares: sum, hasConverged };
}

/**
 * Where a step A δ = −g leads within bounds. What it would carry past a bound is put on the bound, and the rest is solved
 * anew for that: cut off afterwards, parameters that stand for one another would end far from where they belong.
 *
 * @returns undefined where A is singular to rounding
 */
function boundedStep(
  A: Float64Array,
  gradient: Float64Array,
  at: Float64Array,
  least: readonly number[],
  most: readonly number[],
): Float64Array | undefined {
  const P = at.length;
  const delta = new Float64Array(P);
  const isPinned = new Array<boolean>(P).fill(false);
  for (;;) {
    const free = Array.from({ length: P }, (_, i) => i).filter((i) => !isPinned[i]);
    const n = free.length;
    const inverse = choleskyInverse(Float64Array.from(free.flatMap((i) => free.map((j) => A[i * P + j]!))), n);
    if (!inverse) return undefined;
    const rhs = free.map((i) => {
      let sum = -gradient[i]!;
      for (let j = 0; j < P; j++) if (isPinned[j]) sum -= A[i * P + j]! * delta[j]!;
      return sum;
    });
    free.forEach((i, r) => {
      delta[i] = rhs.reduce((sum, v, c) => sum + inverse[r * n + c]! * v, 0);
    });
    const past = free.filter((i) => at[i]! + delta[i]! < least[i]! || at[i]! + delta[i]! > most[i]!);
    if (past.length === 0) return at.map((v, i) => v + delta[i]!);
    for (const i of past) {
      isPinned[i] = true;
      delta[i] = (delta[i]! < 0 ? least[i]! : most[i]!) - at[i]!;
    }
  }
}

const square = (r: Float64Array) => r.reduce((sum, v) => sum + v * v, 0);

/** JᵀJ and Jᵀr at a place. */
function normalEquations(
  residuals: LeastSquaresRequest["residuals"],
  at: Float64Array,
  r: Float64Array,
  scale: readonly number[],
): { readonly jtj: Float64Array; readonly gradient: Float64Array } {
  const P = at.length;
  const columns = scale.map((size, i) => {
    const h = STEP_PART * size;
    const [up, down] = [at.slice(), at.slice()];
    up[i]! += h;
    down[i]! -= h;
    const [high, low] = [residuals(up), residuals(down)];
    return high.map((v, n) => (v - low[n]!) / (2 * h));
  });
  const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, v, n) => sum + v * b[n]!, 0);
  const jtj = new Float64Array(P * P);
  for (let i = 0; i < P; i++) for (let j = 0; j < P; j++) jtj[i * P + j] = dot(columns[i]!, columns[j]!);
  return { jtj, gradient: Float64Array.from(columns, (column) => dot(column, r)) };
}
