import type { Complex } from "../contract.ts";

interface CurvePoint extends Complex {
  readonly at: number;
}

/**
 * The polynomial through complex points, by the barycentric formula Σ wᵢzᵢ/(x − xᵢ) / Σ wᵢ/(x − xᵢ) with
 * wᵢ = 1/Π (xᵢ − xⱼ): stable for points that crowd towards the ends of their interval. Differences are taken in parts
 * of the interval, so that the weights stay near one.
 *
 * J.-P. Berrut and L. N. Trefethen, "Barycentric Lagrange interpolation", SIAM Review 46 (2004) 501-517.
 *
 * @throws RangeError when two points are at one place
 */
export function curveThrough(points: readonly CurvePoint[]): (x: number) => Complex {
  const places = points.map((point) => point.at);
  // A quarter of the interval is its capacity: products of differences then neither grow nor shrink with their number.
  const unit = (Math.max(...places) - Math.min(...places)) / 4 || 1;
  const weights = points.map((point, i) => {
    let product = 1;
    for (const [j, other] of points.entries()) if (j !== i) product *= (point.at - other.at) / unit;
    if (product === 0) throw new RangeError(`curveThrough: two points at ${point.at}`);
    return 1 / product;
  });
  return (x) => {
    let re = 0;
    let im = 0;
    let all = 0;
    for (const [i, point] of points.entries()) {
      if (x === point.at) return { re: point.re, im: point.im };
      const part = weights[i]! / (x - point.at);
      re += part * point.re;
      im += part * point.im;
      all += part;
    }
    return { re: re / all, im: im / all };
  };
}
