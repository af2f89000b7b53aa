import { expect, test, vi } from "vitest";
import { driveTrial, type Loose, type Plan, type ToleranceRequest, wavelength_m } from "../../engine/index.ts";
import { toleranceTrial } from "../../engine/sweep/tolerance/toleranceTrial.ts";
import { okValue } from "../support/okValue.ts";
import { trialPair } from "../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 60_000 });

/*
 * How critical a pair is, by a two-mesh sum with sinusoidal currents that was made apart from the engine (not published): wire
 * of 2 mm at 7.1 MHz over perfect ground with 10 ohm in each base for the ground's loss, a fifth of a wavelength apart,
 * seen at 20 degrees. Driven resonant, reflector at its best front-to-back.
 */
const WAVELENGTH_m = wavelength_m(7.1);
const RESONANT_wl = 0.2436;

function pair(longer: number): Plan {
  const plan = trialPair({
    ground: { kind: "perfect" },
    spacing_m: 0.2 * WAVELENGTH_m,
    driven_m: RESONANT_wl * WAVELENGTH_m,
    reflector_m: RESONANT_wl * (1 + longer) * WAVELENGTH_m,
  });
  return {
    ...plan,
    frequency_MHz: 7.1,
    elements: plan.elements.map((element) => ({
      ...element,
      diameter_mm: 2,
      baseSeries: { resistance_ohm: 10, reactance_ohm: 0 },
    })),
  };
}
function asked(plan: Plan) {
  const request: ToleranceRequest = {
    kind: "tolerance",
    plan,
    look: { pathElevation_deg: 20, rearSector_deg: 120 },
    rungs_deg: [],
    azimuthCutElevation_deg: 20,
    errors: { driven_m: 0, reflector_m: 0, spacing_m: 0.02 * WAVELENGTH_m, thickness: 0, heading_deg: 0 },
    draws: 20,
    seed: 1,
  };
  const picture = okValue(driveTrial(okValue(toleranceTrial(request))));
  return { picture, of: (what: Loose) => picture.sensitivities.find((one) => one.what === what)! };
}

/*
 * There best front-to-back is 8.0 dB with the reflector 3.8 % longer than a resonant one; here 7.83 dB at 3.5 %, whose currents are
 * not sinusoidal. What is told is how it falls off from there, so the engine's own best is where it is asked.
 */
const { picture, of } = asked(pair(0.0353));

test("the best front-to-back is where it was taken to be", () => {
  expect(Math.abs(picture.exact.frontToBack_dB - 8)).toBeLessThan(0.25);
  // By the slope and by the curve: a centimetre is not worth a hundredth of a decibel.
  expect(Math.abs(of("reflector").slope.frontToBack_dB)).toBeLessThan(0.01);
});

/** Told to a tenth of a decibel and to 3 ohm, so up to the next rounding. Found: 0.04 dB back, 0.11 dB ahead, 3.0 ohm. */
test("spacing off by a tenth hardly matters", () => {
  const { less, more } = of("spacing").ends!;
  for (const end of [less, more]) {
    expect(Math.abs(end.frontToBack_dB - picture.exact.frontToBack_dB)).toBeLessThan(0.15);
    expect(Math.abs(end.forward_dBi - picture.exact.forward_dBi)).toBeLessThan(0.15);
    const away = Math.hypot(
      end.resistance_ohm - picture.exact.resistance_ohm,
      end.reactance_ohm - picture.exact.reactance_ohm,
    );
    expect(away).toBeLessThan(3.5);
  }
  // A tenth is 84 cm; nowhere within a third does front-to-back lose 1 dB.
  expect(of("spacing").allowed.frontToBack).toEqual({ less: null, more: null });
});

/**
 * Within 1 dB of its best from 1.8 % shorter to 3.1 % longer; found 1.9 and 3.2 %. Both ends of a flat top told to 0.1 %, best told
 * to 0.1 %: 0.2 %.
 */
test("the reflector's length is one-sided: too long forgives, too short does not", () => {
  const { less, more } = of("reflector").allowed.frontToBack;
  const percent = (length_cm: number | null) => length_cm! / (RESONANT_wl * WAVELENGTH_m);
  expect(Math.abs(percent(less) - 1.8)).toBeLessThan(0.2);
  expect(Math.abs(percent(more) - 3.1)).toBeLessThan(0.2);
});

/** Down by 0.04 dB at 10 degrees and 0.4 at 30, nearly as the square: 0.3 dB at 26 to 27.5. Found: 27.3. */
test("pointing it wrong hardly matters", () => {
  const { less, more } = of("heading").allowed.forward;
  expect(less).toBeCloseTo(more!, 6);
  expect(more).toBeGreaterThan(25.5);
  expect(more).toBeLessThan(28.5);
});
