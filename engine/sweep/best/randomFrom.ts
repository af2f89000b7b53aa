/**
 * Random numbers in [0, 1) from a seed: the same seed, the same numbers, on any machine.
 *
 * Marsaglia's xorshift with 128 bits of state, its words spread from the seed by a multiplicative step, the first few
 * numbers thrown away because a small seed still shows in them.
 *
 * Accuracy: 32 bits, period 2^128 − 1; for drawing designs, not for secrets.
 * Source: G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (2003) no. 14.
 *
 * @throws RangeError when the seed is not a whole number from 0 to 2^32 − 1
 */
export function randomFrom(seed: number): () => number {
  if (!(Number.isInteger(seed) && seed >= 0 && seed < 2 ** 32))
    throw new RangeError(`randomFrom: the seed ${seed} is not a whole number from 0 to 4294967295`);
  let spread = seed;
  const word = () => {
    spread = (Math.imul(spread ^ (spread >>> 16), 0x45d9f3b) + 0x9e3779b9) | 0;
    return spread;
  };
  let [x, y, z, w] = [word(), word(), word(), word() | 1];
  const next = () => {
    const t = x ^ (x << 11);
    x = y;
    y = z;
    z = w;
    w = w ^ (w >>> 19) ^ (t ^ (t >>> 8));
    return (w >>> 0) / 2 ** 32;
  };
  for (let i = 0; i < 16; i++) next();
  return next;
}
