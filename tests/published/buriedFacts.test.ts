import { describe, expect, test, vi } from "vitest";
import { C0_mPerS } from "../../engine/constants.ts";
import { type Ground, solveWires, type WireSolution } from "../../engine/index.ts";
import groundSystems from "../fixtures/groundSystems.json" with { type: "json" };
import measured from "../fixtures/groundSystems1937.json" with { type: "json" };
import { buriedVertical } from "../support/buriedVertical.ts";
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import { okValue } from "../support/okValue.ts";
import { radialVertical } from "../support/radialVertical.ts";
import { rowsOf } from "../support/rowsOf.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 60_000 });

const soil = (relativePermittivity: number, conductivity_SPerM: number): Ground => ({
  kind: "soil",
  relativePermittivity,
  conductivity_SPerM,
});
const average = soil(13, 0.005);
const good = soil(20, 0.03);
const poor = soil(5, 0.001);
const within = (found: number, low: number, high: number) => {
  expect(found).toBeGreaterThanOrEqual(low);
  expect(found).toBeLessThanOrEqual(high);
};

const FREQUENCY_HZ = 7.1e6;
const WAVELENGTH_m = C0_mPerS / FREQUENCY_HZ;
/** Fewer wires stand nearer to their own resonance and are cut more finely; what that leaves is 0.1 ohm and 0.003 dB. */
const cuts = (radials: number) => ({
  uprightSegments: 16,
  radialSegments: radials <= 4 ? 20 : radials <= 16 ? 12 : 8,
});
const resistance = (s: WireSolution) => s.ports[0]!.impedance_ohm.re;
/** At 5 degrees, mean of power over azimuth, which two radials alone make matter. */
function gain_dBi(s: WireSolution, radials: number): number {
  let sum = 0;
  for (let i = 0; i < 8; i++) sum += 10 ** (s.gain_dBi(5, (45 * (i + 0.3)) / radials) / 10);
  return 10 * Math.log10(sum / 8);
}
function solve(ground: Ground, frequency_Hz: number, { wires, port }: ReturnType<typeof buriedVertical>): WireSolution {
  return okValue(solveWires({ frequency_Hz, soilModel: "full-wave", ground, wires, ports: [port] }));
}
/** A vertical on radials of 2 mm wire at 7.1 MHz, 5 cm deep or lying so high over the soil. */
function on(ground: Ground, laid: "buried" | number, radials: number, radial_wl: number, upright_m = WAVELENGTH_m / 4) {
  const common = { upright_m, radials, radial_m: radial_wl * WAVELENGTH_m, ...cuts(radials) };
  return solve(
    ground,
    FREQUENCY_HZ,
    laid === "buried"
      ? buriedVertical({ depth_m: 0.05, leadSegments: 3, ...common })
      : radialVertical({ hub_m: laid, ...common }),
  );
}

/*
 * The handbook's near-optimum systems. Soil, frequency and wire are not in the table: average soil, 7.1 MHz, 2 mm wire and 5 cm
 * are assumed. Found: 47.3, 43.4, 40.4, 36.8, 34.8, 36.6 ohm for 52, 46, 43, 40, 37, 35: 2 to 5 ohm lower but for the longest.
 */
test.each(
  rowsOf(groundSystems, "6-60", "6-61", "6-62", "6-63", "6-64", "6-65").map(
    (r) => [condition(r, "radials"), condition(r, "radial_length_over_lambda"), r] as const,
  ),
)("handbook: feed resistance on %d radials of %d wavelength, buried", (count, length, row) => {
  expect(excess(row, resistance(on(average, "buried", count, length, 10.27)))).toBeLessThanOrEqual(1);
});

/*
 * Common practice, no source for the figures; buriedRadials.json has the independent solution's for 5 cm in average soil, and
 * fullWaveRadials.json those for radials on it. In all of this block bare wire.
 */
describe("bare radials in the soil and on it", () => {
  const steps = [2, 4, 8, 16, 32, 64].map((n) => ({ n, deep: on(average, "buried", n, 0.25) }));

  test("each doubling of buried quarter-wave radials helps, less and less: 103, 75, 60, 50, 43, 39 ohm", () => {
    // 75, 60, 50, 39 for 4, 8, 16, 64 is what those who bury them in ordinary soil quote.
    for (const [n, ohm] of [
      [4, 75],
      [8, 60],
      [16, 50],
      [64, 39],
    ] as const)
      within(resistance(steps.find((s) => s.n === n)!.deep), ohm - 1, ohm + 1);
    const gains = steps.map(({ n, deep }) => gain_dBi(deep, n));
    const gained = gains.slice(1).map((g, i) => g - gains[i]!);
    for (const [i, g] of gained.entries()) within(g, 0.2, i === 0 ? 2 : gained[i - 1]!);
  });

  /** Found for 2, 4, 8, against 2 cm up: 2.1, 1.0, 0.3 dB with an eighth wave, 1.6, 1.9, 1.4 dB with a quarter. */
  test.each([0.125, 0.25])("a few are worse in the soil than on it, %d wavelength", (length) => {
    for (const n of [2, 4, 8]) {
      const lying = gain_dBi(on(average, 0.02, n, length), n);
      within(lying - gain_dBi(on(average, "buried", n, length), n), 0.2, 2.5);
    }
  });

  /** The exception: 5 mm over the soil a quarter wave of wire stands near its own resonance. Found: 1.1 dB, good soil 3.7. */
  test("two quarter-wave ones 5 mm up are worse than in the soil", () => {
    for (const ground of [average, good])
      within(gain_dBi(on(ground, "buried", 2, 0.25), 2) - gain_dBi(on(ground, 0.005, 2, 0.25), 2), 0.5, 4.5);
  });

  test("of 64 it does not matter, in any soil: within 0.3 dB", () => {
    for (const ground of [poor, average, good])
      for (const height of [0.005, 0.02]) {
        const [deep, lying] = [on(ground, "buried", 64, 0.25), on(ground, height, 64, 0.25)];
        within(gain_dBi(deep, 64) - gain_dBi(lying, 64), -0.3, 0.3);
      }
  });

  /**
   * Lying on good soil four long ones are far worse than the same cut shorter (−5.3 and −2.9 dBi; see radialFacts). In the
   * soil they neither resonate nor reach far: found −3.62 dBi with an eighth wave, −3.60 with a quarter.
   */
  test("four on good soil: long ones are worse than short ones, in it no better and no worse", () => {
    const gain = (laid: "buried" | number, length: number) => gain_dBi(on(good, laid, 4, length), 4);
    within(gain(0.005, 0.125) - gain(0.005, 0.25), 2, 3);
    within(gain("buried", 0.125) - gain("buried", 0.25), -0.1, 0.1);
  });
});

/*
 * The 1937 measurements, each radial a wire 15 cm deep. The soil was not recorded: (15, 0.004 S/m) is an assumption of later
 * readers. As steps between counts, so that the way over the ground to the meter drops out, found −1.59, −0.83 and
 * −0.28 dB for 15, 30 and 60 radials against 113; measured −1.65, −0.97 and −0.42. The preview, which has them as a
 * screen, gives two thirds of that (radialFacts).
 *
 * What the length of the radials brings shows the soil: in that one an eighth wave is 1.25 dB worse than 0.41, and 2.05 was
 * measured. Poorer soil, (10, 0.002 S/m), has it right, and with it all twelve fields of 15 radials and more, of three
 * lengths, within 0.4 dB (root of mean square 0.2). That is one pair of figures chosen for twelve; nobody measured it.
 *
 * With two radials the model is 1.2 dB below what was measured in the assumed soil and 2.6 dB in the poorer one. Better
 * soil (15, 0.008) would agree there and be 1.3 dB off elsewhere. What else the mast was earthed by is not known; a rod of 2 m
 * under it would make up for 0.3 dB, and the side from which it was measured for 0.1 dB.
 */
describe("1937", () => {
  const lambda_m = C0_mPerS / measured.frequency_hz;
  const known = new Map<string, number>();
  const field_dB = (ground: Ground, radials: number, radial_wl: number): number => {
    const key = `${JSON.stringify(ground)} ${radials} ${radial_wl}`;
    let g = known.get(key);
    if (g === undefined) {
      const vertical = buriedVertical({
        depth_m: measured.depth_m,
        upright_m: (measured.electrical_height_deg / 360) * lambda_m,
        radius_m: measured.mast_radius_m,
        radialRadius_m: measured.radial_radius_m,
        radials,
        radial_m: radial_wl * lambda_m,
        uprightSegments: 20,
        leadSegments: 4,
        radialSegments: radials < 5 ? 36 : radials < 20 ? 24 : radials < 100 ? 14 : 10,
      });
      g = gain_dBi(solve(ground, measured.frequency_hz, vertical), radials);
      known.set(key, g);
    }
    return g;
  };
  const assumed = soil(15, 0.004);
  const poorer = soil(10, 0.002);

  test.each(rowsOf(groundSystems, "6-150", "6-151", "6-152").map((r) => [condition(r, "radials"), r] as const))(
    "%d radials against 113, assumed soil",
    (count, row) => {
      const length = condition(row, "radial_length_over_lambda");
      const step = field_dB(assumed, count, length) - field_dB(assumed, condition(row, "reference_radials"), length);
      expect(excess(row, step)).toBeLessThanOrEqual(1);
      // Closer than the preview can be.
      expect(Math.abs(step - (row.value as number))).toBeLessThan(0.2);
    },
  );

  const most = measured.rows.find((r) => r.radials === 113 && r.radial_wl === 0.411)!;
  const decibels = (field: number) => 20 * Math.log10(field / most.field_mVPerM);

  test.each(measured.rows.filter((r) => r.radials > 2))(
    "$radials radials of $radial_wl wavelength, poorer soil",
    ({ radials, radial_wl, field_mVPerM }) => {
      const step = field_dB(poorer, radials, radial_wl) - field_dB(poorer, most.radials, most.radial_wl);
      const field = most.field_mVPerM * 10 ** (step / 20);
      expect(Math.abs(field - field_mVPerM)).toBeLessThan(measured.tolerance_mVPerM);
    },
  );

  test("two radials: the model falls short of what was measured", () => {
    for (const [ground, least, most_dB] of [
      [assumed, 0.9, 1.5],
      [poorer, 2.3, 2.9],
    ] as const) {
      const step = field_dB(ground, 2, 0.411) - field_dB(ground, 113, 0.411);
      const row = measured.rows.find((r) => r.radials === 2 && r.radial_wl === 0.411)!;
      within(decibels(row.field_mVPerM) - step, least, most_dB);
    }
  });
});

/*
 * A ladder of counts measured in the field; the soil was not recorded. In poor soil, 5 cm deep, the model has −2.05, −0.71 and
 * −0.17 dB for 8, 16 and 32 where −2.7, −1.3 and −0.8 were measured. Four lost 5.5 dB there, and lose 4.3 in poor soil, 2.9
 * in average and at most 3.2 on the soil (good, 5 mm up): more than the model has for any of them. The same test found four raised
 * ones 4.3 dB below sixty on the ground, where the model, and other measurements, have them level: experimenters disagree.
 */
test.each(rowsOf(groundSystems, "6-71", "6-72", "6-73").map((r) => [condition(r, "radials"), r] as const))(
  "a measured ladder: %d radials against sixty, poor soil assumed",
  (count, row) => {
    const step = gain_dBi(on(poor, "buried", count, 0.25), count) - gain_dBi(on(poor, "buried", 60, 0.25), 60);
    expect(excess(row, step)).toBeLessThanOrEqual(1);
  },
);

test("the measured ladder's four radials: the model is a decibel or more short, in any soil", () => {
  const [row] = rowsOf(groundSystems, "6-70");
  for (const ground of [poor, average, good])
    for (const laid of ["buried", 0.005] as const) {
      const step = gain_dBi(on(ground, laid, 4, 0.25), 4) - gain_dBi(on(ground, laid, 60, 0.25), 60);
      within(step - (row!.value as number), 1, 4.5);
    }
});
