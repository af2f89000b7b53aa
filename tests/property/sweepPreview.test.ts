import fc from "fast-check";
import { expect, test } from "vitest";
import { type Plan, sweepBand, sweepBandSmooth } from "../../engine/index.ts";
import { between } from "../support/between.ts";
import { okValue } from "../support/okValue.ts";

const element = fc.record({
  height: between(0.21, 0.28),
  radials: fc.integer({ min: 0, max: 60 }),
  radialLength: between(0.06, 0.3),
  diameter_mm: between(1, 40),
});

/** One to three uprights over any soil, lengths in wavelengths, and a band of 0.2 to 20 %. */
const cases = fc
  .record({
    frequency_MHz: between(3.5, 30),
    width: between(Math.log(0.002), Math.log(0.2)).map(Math.exp),
    relativePermittivity: between(3, 80),
    conductivity_SPerM: between(-3.3, -0.7).map((x) => 10 ** x),
    elements: fc.array(element, { minLength: 1, maxLength: 3 }),
    apart: between(0.1, 0.3),
    aside: between(-0.1, 0.1),
    loaded: fc.boolean(),
  })
  .map((c) => {
    const wavelength_m = 299.792458 / c.frequency_MHz;
    const plan: Plan = {
      format: "hindwire-plan",
      version: 1,
      title: "swept",
      frequency_MHz: c.frequency_MHz,
      ground: {
        kind: "soil",
        relativePermittivity: c.relativePermittivity,
        conductivity_SPerM: c.conductivity_SPerM,
      },
      soilModel: "screen",
      elements: c.elements.map(({ height, radials, radialLength, diameter_mm }, i) => ({
        id: `e${i}`,
        forward_m: -i * c.apart * wavelength_m,
        left_m: i * c.aside * wavelength_m,
        height_m: height * wavelength_m,
        diameter_mm,
        conductor: "copper",
        base:
          i === 0
            ? { kind: "fed" }
            : c.loaded
              ? { kind: "loaded", resistance_ohm: 1, reactance_ohm: 20 }
              : { kind: "joined" },
        radials: { count: radials, length_m: radialLength * wavelength_m, height_m: 0, diameter_mm: 1.6 },
      })),
    };
    const half_MHz = 0.5 * c.width * c.frequency_MHz;
    return { plan, from_MHz: c.frequency_MHz - half_MHz, to_MHz: c.frequency_MHz + half_MHz };
  });

test("the soil preview's sweep of few solves lies by every solve as near as it states", { timeout: 60_000 }, () => {
  let most = 0;
  fc.assert(
    fc.property(cases, ({ plan, from_MHz, to_MHz }) => {
      const request = { from_MHz, to_MHz, points: 11, elevation_deg: 8 };
      const smooth = okValue(sweepBandSmooth(plan, request));
      const solved = okValue(sweepBand(plan, request));
      const { solved_MHz, error_ohm, error_dB, errorBehind } = smooth.interpolated!;
      most = Math.max(most, solved_MHz.length);
      // As the docstring of smoothSweepStep has it: twice and 1e-3 ohm, twice and 1e-4 dB.
      const [z, want] = [smooth.feeds[0]!, solved.feeds[0]!];
      const loudest_dBi = Math.max(...solved.beam!.forward_dBi);
      for (let i = 0; i < 11; i++) {
        const dR = z.resistance_ohm[i]! - want.resistance_ohm[i]!;
        const dX = z.reactance_ohm[i]! - want.reactance_ohm[i]!;
        expect(Math.hypot(dR, dX), `impedance, ${i}`).toBeLessThan(2 * error_ohm + 1e-3);
        const gain = smooth.beam!.forward_dBi[i]! - solved.beam!.forward_dBi[i]!;
        // Errors are parts of the field ahead: in a dip of it they are more of what is left.
        const dip = 10 ** ((loudest_dBi - solved.beam!.forward_dBi[i]!) / 20);
        expect(Math.abs(gain), `ahead, ${i}`).toBeLessThan(2 * dip * error_dB! + 1e-4);
        const ratio = 10 ** (-smooth.beam!.frontToBack_dB[i]! / 20);
        const ratioWanted = 10 ** (-solved.beam!.frontToBack_dB[i]! / 20);
        // A ratio of two fields is off by the errors of both.
        const allowed = errorBehind! + ratioWanted * (10 ** (error_dB! / 20) - 1);
        expect(Math.abs(ratio - ratioWanted), `behind, ${i}`).toBeLessThan(2 * dip * allowed + 1e-5);
      }
    }),
    { seed: 33, numRuns: 40, endOnFailure: true },
  );
  // Otherwise no wide band with a sharp reflector came up.
  expect(most).toBeGreaterThan(7);
});
