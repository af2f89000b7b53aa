/** How close children stay to their parents, and mutants to what they were; larger is closer. */
const CROSS = 15;
const MUTATE = 20;

export interface Sides {
  readonly least: readonly number[];
  readonly most: readonly number[];
}

/**
 * Two children of two parents, within bounds: simulated binary crossover of each variable with even chance, then
 * polynomial mutation of one variable a child on average.
 *
 * Source: K. Deb and R. B. Agrawal, Complex Systems 9 (1995) 115-148 (crossover); K. Deb, Multi-Objective Optimization
 * using Evolutionary Algorithms, Wiley 2001 (both, with bounds); from memory.
 */
export function breed(
  a: readonly number[],
  b: readonly number[],
  { least, most }: Sides,
  random: () => number,
): [number[], number[]] {
  const first = [...a];
  const second = [...b];
  for (let v = 0; v < a.length; v++) {
    const [from, to] = [least[v]!, most[v]!];
    if (!(to > from) || random() > 0.5) continue;
    const low = Math.min(a[v]!, b[v]!);
    const high = Math.max(a[v]!, b[v]!);
    if (high - low < 1e-12 * (to - from)) continue;
    const u = random();
    const near = (low + high - (high - low) * spread(u, (low - from) / (high - low))) / 2;
    const far = (low + high + (high - low) * spread(u, (to - high) / (high - low))) / 2;
    const turn = random() < 0.5;
    first[v] = clamp(turn ? far : near, from, to);
    second[v] = clamp(turn ? near : far, from, to);
  }
  return [mutated(first, { least, most }, random), mutated(second, { least, most }, random)];
}

/** Spread factor of the children for a number u in [0, 1), cut off where it would leave a bound `room` parts of the gap away. */
function spread(u: number, room: number): number {
  const alpha = 2 - (1 + 2 * room) ** -(CROSS + 1);
  return u <= 1 / alpha ? (u * alpha) ** (1 / (CROSS + 1)) : (1 / (2 - u * alpha)) ** (1 / (CROSS + 1));
}

function mutated(at: number[], { least, most }: Sides, random: () => number): number[] {
  const free = at.reduce((count, _, v) => count + (most[v]! > least[v]! ? 1 : 0), 0);
  return at.map((x, v) => {
    const extent = most[v]! - least[v]!;
    if (!(extent > 0) || random() * free >= 1) return x;
    const u = random();
    const power = MUTATE + 1;
    const step =
      u < 0.5
        ? (2 * u + (1 - 2 * u) * (1 - (x - least[v]!) / extent) ** power) ** (1 / power) - 1
        : 1 - (2 * (1 - u) + (2 * u - 1) * (1 - (most[v]! - x) / extent) ** power) ** (1 / power);
    return clamp(x + step * extent, least[v]!, most[v]!);
  });
}

const clamp = (x: number, least: number, most: number) => Math.min(most, Math.max(least, x));
