import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { driveTrial } from "../../engine/index.ts";
import { radialsTrial } from "../../engine/sweep/budget/radialsTrial.ts";
import { okValue } from "../support/okValue.ts";
import { trialPair } from "../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 180_000 });

const soils = fc.constantFrom([13, 0.005], [5, 0.001], [20, 0.03]);

test("a reel of any length: never more wire than there is, the curve never falls, the same twice", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 6, max: 300, noNaN: true }),
      soils,
      fc.integer({ min: 2, max: 20 }),
      (wire_m, [relativePermittivity, conductivity_SPerM], mostRadials) => {
        const ground = {
          kind: "soil",
          relativePermittivity: relativePermittivity!,
          conductivity_SPerM: conductivity_SPerM!,
        } as const;
        const run = () =>
          okValue(
            driveTrial(
              okValue(
                radialsTrial({
                  kind: "radials",
                  plan: trialPair({ ground, radials: 4 }),
                  wire_m,
                  look: { pathElevation_deg: 10, rearSector_deg: 90 },
                  heights_m: [0],
                  mostRadials,
                }),
              ),
            ),
          );
        const picture = run();
        const { curve, counts, splits } = picture.heights[0]!;
        for (const lay of [...counts, ...splits.map(({ best }) => best), picture.best]) {
          expect(lay.wire_m).toBeLessThanOrEqual(wire_m + 1e-9);
          for (const { count } of lay.fields) expect(count).toBeLessThanOrEqual(mostRadials);
          expect(lay.loss_dB).toBeGreaterThan(0);
        }
        curve.slice(1).forEach(({ best }, i) => {
          expect(best.forward_dBi).toBeGreaterThanOrEqual(curve[i]!.best.forward_dBi);
        });
        expect(run()).toEqual(picture);
      },
    ),
    { seed: 30, numRuns: 5 },
  );
});
