import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { type PortInput, portImpedances, solveWires, type WireProblem } from "../../engine/index.ts";
import { okValue } from "../support/okValue.ts";
import { randomWires } from "../support/randomWires.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 30_000 });
const settings = { seed: 1846, numRuns: 12 } as const;
const volt: PortInput["termination"] = { kind: "voltage", volts: { re: 1, im: 0 } };
const short: PortInput["termination"] = { kind: "short" };

const fedAt = (problem: WireProblem, fed: number): WireProblem => ({
  ...problem,
  ports: problem.ports.map((p, i) => ({ ...p, termination: i === fed ? volt : short })),
});

test.each(["free-space", "perfect"] as const)("open-circuit impedances are symmetric, %s", (kind) => {
  fc.assert(
    fc.property(randomWires(kind), (problem) => {
      const z = okValue(portImpedances(problem));
      for (const [i, row] of z.entries())
        for (const [j, zij] of row.entries()) {
          const zji = z[j]![i]!;
          const size = Math.sqrt(Math.hypot(z[i]![i]!.re, z[i]![i]!.im) * Math.hypot(z[j]![j]!.re, z[j]![j]!.im));
          expect(Math.hypot(zij.re - zji.re, zij.im - zji.im)).toBeLessThan(1e-9 * size);
        }
    }),
    settings,
  );
});

test.each(["free-space", "perfect"] as const)("a volt here drives there what a volt there drives here, %s", (kind) => {
  fc.assert(
    fc.property(randomWires(kind), (problem) => {
      const last = problem.ports.length - 1;
      const there = okValue(solveWires(fedAt(problem, 0))).ports;
      const here = okValue(solveWires(fedAt(problem, last))).ports;
      const [a, b] = [there[last]!.current_A, here[0]!.current_A];
      const size = Math.sqrt(
        Math.hypot(there[0]!.current_A.re, there[0]!.current_A.im) *
          Math.hypot(here[last]!.current_A.re, here[last]!.current_A.im),
      );
      expect(Math.hypot(a.re, a.im)).toBeGreaterThan(0);
      expect(Math.hypot(a.re - b.re, a.im - b.im)).toBeLessThan(1e-9 * size);
    }),
    settings,
  );
});
