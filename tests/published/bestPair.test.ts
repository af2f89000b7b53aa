import { describe, expect, test, vi } from "vitest";
import { type BestRequest, driveTrial, type Plan, wavelength_m } from "../../engine/index.ts";
import { bestTrial } from "../../engine/sweep/best/bestTrial.ts";
import { okValue } from "../support/okValue.ts";
import { trialPair } from "../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 120_000 });

const WAVELENGTH_m = wavelength_m(7.1);

/** The driven element is resonant with such a reflector behind it. */
const DRIVEN_wl = 0.2417;

/** Wire of 1 mm diameter over perfect ground, without loss. */
function pair(spacing_wl: number): Plan {
  const plan = trialPair({
    ground: { kind: "perfect" },
    spacing_m: spacing_wl * WAVELENGTH_m,
    driven_m: DRIVEN_wl * WAVELENGTH_m,
    reflector_m: 0.245 * WAVELENGTH_m,
  });
  return {
    ...plan,
    frequency_MHz: 7.1,
    elements: plan.elements.map((element) => ({ ...element, diameter_mm: 1, conductor: "perfect" })),
  };
}

const at = (value: number) => ({ least: value, most: value });
function tuned(spacing_wl: number, weights: BestRequest["weights"], spacing_m = at(spacing_wl * WAVELENGTH_m)) {
  const plan = pair(spacing_wl);
  return okValue(
    driveTrial(
      okValue(
        bestTrial({
          kind: "best",
          plan,
          look: { pathElevation_deg: 5, rearSector_deg: 120 },
          segment_MHz: { from: 7.1, to: 7.1 },
          weights,
          bounds: {
            driven_m: at(DRIVEN_wl * WAVELENGTH_m),
            reflector_m: { least: 0.235 * WAVELENGTH_m, most: 0.27 * WAVELENGTH_m },
            spacing_m,
            coil_ohm: at(0),
          },
          seed: 1,
        }),
      ),
    ),
  );
}

/*
 * Computed apart from the engine, by a solution of Hallén's equation with the exact tube kernel (not published): over perfect
 * ground 1 mm wire at 7.1 MHz, driven at resonance, has its best front-to-back at 5 degrees fall from about 11.4 dB at 0.08 wavelength to about 8.5 dB
 * at 0.30, with the reflector 0.2504 to 0.2513 wavelength tall throughout. Stated to a tenth of a decibel ("about") and to
 * 0.0001 wavelength, so 0.1 dB; the length where a flat top lies is uncertain by what 0.001 dB is worth, 0.0003 wavelength. Found: 11.40 and 8.45
 * dB, 0.2509 and 0.2505 wavelength. Off resonance by 0.004 wavelength it is 0.2 dB more or less.
 */
describe("best front-to-back by the reflector's length alone, perfect ground", () => {
  const only = { forward: 0, back: 1, rear: 0, swr: 0 };
  test.each([
    [0.08, 11.4],
    [0.3, 8.5],
  ])("%d wavelength apart: %d dB", (spacing_wl, best_dB) => {
    const { pick, front } = tuned(spacing_wl, only);
    expect(front.length).toBe(1);
    expect(pick.isSolved).toBe(true);
    // Resonant: to what half a thousandth of a wavelength is worth.
    expect(Math.abs(pick.impedance_ohm.im)).toBeLessThan(2);
    expect(Math.abs(pick.figures.frontToBack_dB - best_dB)).toBeLessThan(0.1);
    expect(pick.reflector_m / WAVELENGTH_m).toBeGreaterThan(0.2504 - 0.0003);
    expect(pick.reflector_m / WAVELENGTH_m).toBeLessThan(0.2513 + 0.0003);
  });

  test("spacing free as well: as close as it may, and the same there", () => {
    const { pick } = tuned(0.2, only, { least: 0.08 * WAVELENGTH_m, most: 0.3 * WAVELENGTH_m });
    expect(pick.spacing_m / WAVELENGTH_m).toBeLessThan(0.081);
    expect(Math.abs(pick.figures.frontToBack_dB - 11.4)).toBeLessThan(0.1);
  });
});

/*
 * Common practice, no source: gain ahead is greatest with a shorter reflector than front-to-back is, and the two are what is
 * traded along the front.
 */
test("most gain ahead lies at a shorter reflector than most front-to-back", () => {
  const gain = tuned(0.15, { forward: 1, back: 0, rear: 0, swr: 0 }).pick;
  const back = tuned(0.15, { forward: 0, back: 1, rear: 0, swr: 0 }).pick;
  expect(gain.reflector_m).toBeLessThan(back.reflector_m - 0.005 * WAVELENGTH_m);
  expect(gain.figures.forward_dBi).toBeGreaterThan(back.figures.forward_dBi);
  expect(gain.figures.frontToBack_dB).toBeLessThan(back.figures.frontToBack_dB);
  // Of both weighed alike the front runs between them, and none on it is worse in both than another.
  const { front } = tuned(0.15, { forward: 1, back: 1, rear: 0, swr: 0 });
  expect(front.length).toBeGreaterThan(5);
  for (const { reflector_m } of front) {
    expect(reflector_m).toBeGreaterThan(gain.reflector_m - 0.002);
    expect(reflector_m).toBeLessThan(back.reflector_m + 0.002);
  }
});
