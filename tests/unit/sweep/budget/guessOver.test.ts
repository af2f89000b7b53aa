import { expect, test } from "vitest";
import type { RadialLaying } from "../../../../engine/index.ts";
import { guessOver } from "../../../../engine/sweep/budget/guessOver.ts";

/** Equal radials solved at four lengths; gains invented. */
const solved = (count: number, gains: readonly number[]): RadialLaying[] =>
  [1, 2, 4, 8].map((length_m, i) => ({
    height_m: 0,
    fields: [{ elementId: "driven", count, length_m }],
    wire_m: count * length_m,
    forward_dBi: gains[i]!,
    loss_dB: 1,
    resistance_ohm: 40,
    reactance_ohm: 0,
    swr50: 1.3,
  }));

/** λ = 16 m: lengths from 0.8 to 8 m. Even steps in log(length): the top of the parabola through 0, 1, 0 is its middle. */
test("the full length, and the top before it; best first", () => {
  const laid = [...solved(4, [-1, 0, 1, 0]), ...solved(8, [-1, 0, 0.5, 0.7])];
  const guesses = guessOver(laid, 32, 16);
  expect(guesses.map(({ count }) => count)).toEqual([4, 8, 4]);
  // Cut to the centimetre below: rounding may take one off.
  for (const [i, length_m] of [4, 4, 8].entries()) expect(length_m - guesses[i]!.length_m).toBeLessThan(0.0101);
  for (const [i, gain] of [1, 0.5, 0].entries()) expect(guesses[i]!.forward_dBi).toBeCloseTo(gain, 9);
});

test("no top that the wire does not reach, no count it does not suffice for", () => {
  const laid = [...solved(4, [-1, 0, 1, 0]), ...solved(12, [0, 1, 2, 3])];
  const [only, ...rest] = guessOver(laid, 9, 16);
  expect(rest).toEqual([]);
  expect(only).toMatchObject({ count: 4, length_m: 2.25 });
  // Straight between 2 and 4 m in log(length).
  expect(only!.forward_dBi).toBeCloseTo(Math.log(2.25 / 2) / Math.log(2), 9);
});

test("never longer than half a wavelength", () => {
  expect(guessOver(solved(2, [0, 1, 2, 3]), 100, 16)[0]!.length_m).toBe(8);
});
