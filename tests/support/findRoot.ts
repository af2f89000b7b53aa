/** Root of f between a and b, where f must change sign, by regula falsi with halving (Illinois). Throws where it does not. */
export function findRoot(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  let [x0, x1] = [a, b];
  let [f0, f1] = [f(a), f(b)];
  if (!(f0 * f1 <= 0)) throw new RangeError(`findRoot: no change of sign between ${a} and ${b}: ${f0}, ${f1}`);
  for (let round = 0; round < 100; round++) {
    const x = x1 - (f1 * (x1 - x0)) / (f1 - f0);
    const y = f(x);
    if (y * f1 < 0) [x0, f0] = [x1, f1];
    else f0 /= 2;
    const moved = Math.abs(x - x1);
    [x1, f1] = [x, y];
    if (y === 0 || moved < tolerance) return x1;
  }
  throw new RangeError(`findRoot: not settled between ${a} and ${b}`);
}
