import { describe, expect, test, vi } from "vitest";
import { C0_mPerS } from "../../engine/constants.ts";
import { type Complex, type Ground, solveWires, swr, type WireSolution } from "../../engine/index.ts";
import groundSystems from "../fixtures/groundSystems.json" with { type: "json" };
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import { findRoot } from "../support/findRoot.ts";
import { okValue } from "../support/okValue.ts";
import { radialVertical } from "../support/radialVertical.ts";
import { rowsOf } from "../support/rowsOf.ts";
import { ONE_VOLT, SHORT, uprights } from "../support/uprights.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 60_000 });

const average: Ground = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 };
const good: Ground = { kind: "soil", relativePermittivity: 20, conductivity_SPerM: 0.03 };
const FREQUENCY_HZ = 7.1e6;
const WAVELENGTH_m = C0_mPerS / FREQUENCY_HZ;
const within = (found: number, low: number, high: number) => {
  expect(found).toBeGreaterThanOrEqual(low);
  expect(found).toBeLessThanOrEqual(high);
};

/** A quarter-wave vertical of 2 mm wire on radials as wires, by the full-wave model. */
function onRadials(ground: Ground, hub_m: number, radials: number, length_wl: number, radialSegments = 8) {
  const radial_m = length_wl * WAVELENGTH_m;
  const v = { hub_m, upright_m: WAVELENGTH_m / 4, radials, radial_m, uprightSegments: 16, radialSegments };
  const { wires, port } = radialVertical(v);
  const problem = { frequency_Hz: FREQUENCY_HZ, soilModel: "full-wave", ground, wires, ports: [port] } as const;
  return okValue(solveWires(problem));
}
const resistance = (s: WireSolution) => s.ports[0]!.impedance_ohm.re;
const efficiency = (s: WireSolution) => s.radiatedPower_W / s.inputPower_W;

describe("radials on soil, full-wave", () => {
  /*
   * Common practice, no source for the figure; the independent solution in fullWaveRadials.json has the same pair of cases
   * (−2.88 and −5.38 dBi). A quarter wave of wire this close to soil is electrically longer than that, and a few of them
   * stand near their resonance.
   */
  test("four radials may do better cut shorter: an eighth of a wave against a quarter, good soil", () => {
    const short = onRadials(good, 0.005, 4, 0.125, 16);
    const long = onRadials(good, 0.005, 4, 0.25, 16);
    expect(short.gain_dBi(5, 0) - long.gain_dBi(5, 0)).toBeGreaterThan(1);
  });

  /*
   * T. Rauch, Topband mailing list, December 2012, msg00418: feed resistance does not track field strength. Read; it states
   * the fact, no figures. Here: four raised eighth-wave radials show 1.5 ohm less than 64 lying quarter-wave ones and
   * radiate 14 % less of the input. A fixed radiation resistance over R would have it the other way about.
   */
  test("less feed resistance is not more efficiency", () => {
    const raised = onRadials(average, 2, 4, 0.125);
    const lying = onRadials(average, 0.02, 64, 0.25, 6);
    expect(resistance(lying) - resistance(raised)).toBeGreaterThan(1);
    expect(efficiency(raised)).toBeLessThan(0.9 * efficiency(lying));
  });

  /*
   * Common practice, no source: 16 of a quarter wave or 32 of an eighth are nearly as good as 64. Coarse wires (16 segments
   * an upright, 6 to 8 a radial), which leave 0.03 dB. Found at 5 mm over average soil: 0.22 dB short of 64 quarter-wave
   * ones with 16 of them; with 32 eighth-wave ones 1.18 dB, but 0.06 dB short of 64 of the same length. So "about 1 dB"
   * holds, and beyond 32 short ones it is length that is missing, not number.
   */
  test("16 quarter-wave or 32 eighth-wave radials against 64", () => {
    const gain = (n: number, length: number, cuts: number) => onRadials(average, 0.005, n, length, cuts).gain_dBi(5, 0);
    const most = gain(64, 0.25, 6);
    within(most - gain(16, 0.25, 8), 0, 1);
    const short = gain(32, 0.125, 8);
    within(most - short, 0, 1.25);
    within(gain(64, 0.125, 6) - short, 0, 0.2);
  });
});

describe("radials in the preview", () => {
  const screened = (
    ground: Ground,
    frequency_Hz: number,
    mast: [length_m: number, radius_m: number],
    count: number,
    length_m: number,
    radius_m: number,
  ) => {
    const [height_m, thickness_m] = mast;
    const problem = uprights(frequency_Hz, ground, [{ length_m: height_m, radius_m: thickness_m, segments: 20 }]);
    return okValue(solveWires({ ...problem, screens: [{ x_m: 0, y_m: 0, count, length_m, radius_m }] }));
  };

  /** Soil, frequency and wire are not in the table: average soil, 7.1 MHz and 2 mm wire are assumed. */
  test.each(
    rowsOf(groundSystems, "6-60", "6-61", "6-62", "6-63", "6-64", "6-65").map(
      (r) => [condition(r, "radials"), condition(r, "radial_length_over_lambda"), r] as const,
    ),
  )("handbook: feed resistance on %d radials of %d wavelength", (count, length, row) => {
    const s = screened(average, FREQUENCY_HZ, [10.27, 1e-3], count, length * WAVELENGTH_m, 1e-3);
    expect(excess(row, resistance(s))).toBeLessThanOrEqual(1);
  });

  /*
   * The 1937 measurements, 75-degree mast at 3 MHz, radials 0.411 wavelength long, as steps between counts, so that the way
   * over the ground to the meter drops out. The soil was not recorded: (15, 0.004 S/m) is an assumption of later readers.
   * The preview gives −1.13, −0.64 and −0.26 dB for 15, 30 and 60 radials against 113; measured −1.65, −0.97, −0.42. Its
   * steps are about a third too small throughout, and that of 15 misses the limit of 0.5 dB by 0.02. It knows no ends and no
   * line resonance of the radials, lets them carry only what the field over a perfect ground asks of them, and takes losses
   * to first order: likely causes, since all of that weighs more the fewer they are. (Poorer soil, 10 and 0.002 S/m, gives −1.33, −0.75 and −0.30
   * and meets all three; since nobody measured it, that proves nothing.)
   */
  const step = (count: number, ground: Ground) => {
    const row = rowsOf(groundSystems, "6-150")[0]!;
    const lambda = C0_mPerS / condition(row, "frequency_hz");
    const mast: [number, number] = [
      (condition(row, "electrical_height_deg") / 360) * lambda,
      condition(row, "mast_radius_m"),
    ];
    const at = (n: number) =>
      screened(
        ground,
        condition(row, "frequency_hz"),
        mast,
        n,
        condition(row, "radial_length_over_lambda") * lambda,
        condition(row, "radial_radius_m"),
      ).gain_dBi(5, 0);
    return at(count) - at(condition(row, "reference_radials"));
  };
  const assumed: Ground = { kind: "soil", relativePermittivity: 15, conductivity_SPerM: 0.004 };

  test.each(rowsOf(groundSystems, "6-151", "6-152").map((r) => [condition(r, "radials"), r] as const))(
    "1937: %d radials against 113",
    (count, row) => {
      expect(excess(row, step(count, assumed))).toBeLessThanOrEqual(1);
    },
  );

  test("1937: 15 radials against 113, where the preview falls a little short", () => {
    const [row] = rowsOf(groundSystems, "6-150");
    within(step(15, assumed) - (row!.value as number), 0.5, 0.55);
    const poorer: Ground = { kind: "soil", relativePermittivity: 10, conductivity_SPerM: 0.002 };
    expect(excess(row!, step(15, poorer))).toBeLessThanOrEqual(1);
  });
});

/*
 * One vertical of 10.2 m and a reflector of 10.5 m, 8.75 m behind it, at 7.2 MHz over ordinary ground, as those who put them
 * up talk about them. All of this block: common practice, no source. 2 mm wire.
 */
describe("a 40 m vertical with a reflector", () => {
  const TRADE_HZ = 7.2e6;
  const at = (frequency_Hz: number, lengths: readonly number[]) =>
    okValue(
      solveWires(
        uprights(
          frequency_Hz,
          average,
          lengths.map((length_m, i) => ({
            length_m,
            radius_m: 1e-3,
            x_m: -8.75 * i,
            termination: i === 0 ? ONE_VOLT : SHORT,
          })),
        ),
      ),
    );
  const one = at(TRADE_HZ, [10.2]);
  const pair = at(TRADE_HZ, [10.2, 10.5]);

  /*
   * Said: −5 to −5.5 dBi at 5 degrees and about 4 dB more at 10. With no loss counted in the soil near by and its base on
   * the ground, the engine gives −6.35 and 3.8 dB more; an independent solution (farFieldOverSoil.json) has the same
   * field over soil to 0.03 dB. What is said is met by the same vertical on four radials 3 m up, soil and all: −5.43 and 3.7 dB
   * more. So height is the likely difference; who says it states neither height nor radials.
   */
  test("one vertical at 5 degrees: below what is said with its base on the ground", () => {
    within(one.gain_dBi(5, 0), -6.45, -6.25);
    within(one.gain_dBi(10, 0) - one.gain_dBi(5, 0), 3.5, 4.5);
  });
  test("one vertical at 5 degrees: as is said with its base 3 m up on four radials", () => {
    const v = { hub_m: 3, upright_m: 10.2, radials: 4, radial_m: 10.4, uprightSegments: 16, radialSegments: 12 };
    const { wires, port } = radialVertical(v);
    const problem = { frequency_Hz: TRADE_HZ, soilModel: "full-wave", ground: average, wires, ports: [port] } as const;
    const raised = okValue(solveWires(problem));
    within(raised.gain_dBi(5, 0), -5.5, -5);
    within(raised.gain_dBi(10, 0) - raised.gain_dBi(5, 0), 3.5, 4.5);
  });

  /** Said: about 4 dB, 9 to 10 dB front to back. Found: 3.53 dB and 10.05 dB; both round to it. */
  test("what the reflector adds at 5 degrees, and front to back there", () => {
    within(pair.gain_dBi(5, 0) - one.gain_dBi(5, 0), 3.5, 4.5);
    within(pair.gain_dBi(5, 0) - pair.gain_dBi(5, 180), 8.5, 10.5);
  });

  /** Found: 1.80 (1.39 alone). With 25 mm tube 1.98, with 40 mm tube 2.01: a thicker element of this length is too long. */
  test("SWR below 2 with nothing retuned", () => {
    const z: Complex = pair.ports[0]!.impedance_ohm;
    expect(swr(z.re, z.im, 50)).toBeLessThan(2);
  });

  /** Said: driven element resonant near 7.2, reflector alone near 6.95 MHz. Found: 7.148 and 6.944. */
  test("each resonates alone where it is said to", () => {
    const resonance_MHz = (length_m: number) =>
      findRoot((f) => at(f * 1e6, [length_m]).ports[0]!.impedance_ohm.im, 6.6, 7.6, 1e-3);
    within(resonance_MHz(10.2), 7.1, 7.3);
    within(resonance_MHz(10.5), 6.92, 6.98);
  });
});
