/** A line's value between its points, straight; NaN outside them. `x` rises. */
export function readLine(x: readonly number[], y: readonly number[], at: number): number {
  const i = x.findIndex((one) => one >= at);
  if (i < 0 || !(at >= x[0]!)) return Number.NaN;
  if (x[i] === at) return y[i]!;
  const t = (at - x[i - 1]!) / (x[i]! - x[i - 1]!);
  return y[i - 1]! + t * (y[i]! - y[i - 1]!);
}
