import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { solveWires } from "../../engine/index.ts";
import { okValue } from "../support/okValue.ts";
import { randomWires } from "../support/randomWires.ts";

/*
 * What goes in at the ports must come out: radiated, or lost in conductors and loads. The radiated part is an integral of
 * the far field and knows nothing of the matrix that gave the currents. The promise is 1e-4; over 300 draws the worst was
 * 4e-7 in free space and 1.5e-6 over ground, where the integral over directions is the coarser of the two.
 */
/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 30_000 });

test.each(["free-space", "perfect"] as const)("input = radiated + conductor + load, %s", (kind) => {
  let lossy = 0;
  let loaded = 0;
  fc.assert(
    fc.property(randomWires(kind), (problem) => {
      const s = okValue(solveWires(problem));
      expect(s.inputPower_W).toBeGreaterThan(0);
      const spent = s.radiatedPower_W + s.conductorLoss_W + s.loadLoss_W;
      expect(Math.abs(s.inputPower_W - spent)).toBeLessThan(1e-5 * s.inputPower_W);
      expect(s.notes.map((n) => n.code)).not.toContain("power-balance");
      if (s.conductorLoss_W > 1e-3 * s.inputPower_W) lossy++;
      if (s.loadLoss_W > 1e-3 * s.inputPower_W) loaded++;
    }),
    { seed: 1887, numRuns: 30 },
  );
  // The losses were worth counting.
  expect(lossy).toBeGreaterThan(3);
  expect(loaded).toBeGreaterThan(3);
});
