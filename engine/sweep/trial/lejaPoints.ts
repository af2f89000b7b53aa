/** Places searched for the next point; the largest product is then taken to 1/20000 of the interval. */
const GRID = 20_000;

const found: number[] = [-1, 1, 0];

/**
 * The first n points of a Leja sequence on [−1, 1]: the ends, the middle, then always where Π |t − tᵢ| is largest. Polynomials
 * through any first n of them converge as those through Chebyshev's points do, and a sequence never drops a point.
 *
 * Points are kept. F. Leja, Ann. Polon. Math. 4 (1957) 8-13, from memory.
 * @throws RangeError when n is not a whole number from 1 to 60
 */
export function lejaPoints(n: number): readonly number[] {
  if (!(Number.isInteger(n) && n >= 1 && n <= 60)) throw new RangeError(`lejaPoints: n = ${n} is not 1..60`);
  while (found.length < n) {
    let next = 0;
    let largest = 0;
    for (let g = 0; g <= GRID; g++) {
      const t = (2 * g) / GRID - 1;
      let product = 1;
      for (const point of found) product *= 2 * Math.abs(t - point);
      if (product > largest) {
        largest = product;
        next = t;
      }
    }
    found.push(next);
  }
  return found.slice(0, n);
}
