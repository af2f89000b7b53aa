import { describe, expect, test } from "vitest";
import { type ArraySample, type Plan, type Refit, type Result, refitReadings } from "../../engine/index.ts";
import { arraySample } from "../../engine/sweep/trial/arraySample.ts";
import { askKey } from "../../engine/sweep/trial/askKey.ts";
import { lejaPoints } from "../../engine/sweep/trial/lejaPoints.ts";
import type { Trial } from "../../engine/sweep/trial/Trial.ts";
import { twoElements } from "../fixtures/plan/twoElements.ts";
import { evenNumbers, type Garden, type GardenRequest, plantGarden } from "../support/gardens.ts";
import { okValue } from "../support/okValue.ts";

/** Few radials, so that two hundred gardens take a minute; what they stand in is solved in full. */
const plan: Plan = {
  ...twoElements,
  frequency_MHz: 7.1,
  soilModel: "full-wave",
  elements: twoElements.elements.map((e) => ({ ...e, radials: { ...e.radials, count: 4, length_m: 4 } })),
};
/** Readings 300 kHz to either side, where the fit's own curves are solved too: tables of the soil are shared. */
const frequencies_MHz = lejaPoints(5)
  .map((t) => 7.1 + 0.3 * t)
  .toSorted((a, b) => a - b);
const usual: GardenRequest = {
  plan,
  elevation_deg: 10,
  frequencies_MHz,
  length_part: 0.02,
  resistance_ohm: 12,
  reactance_ohm: 0,
  noise: { part: 0.005, ohm: 0.3 },
  soils: ["planned", "drier", "wetter"],
};

/** Solves are kept from garden to garden: the fit's model is the same for all. */
const kept = new Map<string, Result<ArraySample>>();
function drive(trial: Trial<Refit>): Refit {
  for (;;) {
    const { asks, picture } = okValue(trial((ask) => kept.get(askKey(ask))));
    if (asks.length === 0) return picture!;
    for (const ask of asks) kept.set(askKey(ask), arraySample(ask));
  }
}
const refitted = ({ readings }: Garden) =>
  drive(okValue(refitReadings({ plan, readings, trySoils: true, elevation_deg: 10, date: "2026-05-01" })));

interface Miss {
  readonly name: string;
  readonly miss: number;
  readonly error: number;
}

/** How far a refit is from what was hidden, with the errors it states itself. */
function missesOf(garden: Garden, refit: Refit): Miss[] {
  const elements = refit.elements.flatMap(({ lengthFactor, resistance_ohm }, e): Miss[] => [
    {
      name: "length [%]",
      miss: 100 * (lengthFactor.value - garden.lengthFactor[e]!),
      error: 100 * lengthFactor.error!,
    },
    { name: "loss [ohm]", miss: resistance_ohm.value - garden.resistance_ohm[e]!, error: resistance_ohm.error! },
  ]);
  const { value, error_ohm } = refit.mutual_ohm!;
  return [
    ...elements,
    {
      name: "mutual [ohm]",
      miss: Math.hypot(value.re - garden.mutual_ohm.re, value.im - garden.mutual_ohm.im),
      error: error_ohm,
    },
  ];
}

const rms = (values: readonly number[]) => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
const most = (values: readonly number[]) => Math.max(...values.map(Math.abs));

describe("invented gardens, measured with 0.5 % and 0.3 ohm of noise", { timeout: 400_000 }, () => {
  const wanted = { "length [%]": 0.2, "loss [ohm]": 1, "mutual [ohm]": 1 } as Readonly<Record<string, number>>;

  test("two hundred: lengths to 0.2 %, loss and mutual impedance to 1 ohm, front-to-back to 0.5 dB, or the fit says so", () => {
    const even = evenNumbers(200);
    const misses: Miss[] = [];
    const beams: number[] = [];
    let soilsRight = 0;
    for (let n = 0; n < 200; n++) {
      const garden = plantGarden(usual, even);
      const refit = refitted(garden);
      misses.push(...missesOf(garden, refit));
      beams.push(refit.measured.frontToBack_dB - garden.frontToBack_dB);
      if (refit.soil.alike.includes(garden.soil.id)) soilsRight++;
    }
    for (const [name, limit] of Object.entries(wanted)) {
      const own = misses.filter((one) => one.name === name);
      const sizes = own.map(({ miss }) => miss);
      const inErrors = own.map(({ miss, error }) => miss / error);
      console.log(
        `${name}: rms ${rms(sizes).toFixed(3)}, most ${most(sizes).toFixed(3)}; over the stated error rms ${rms(inErrors).toFixed(2)}`,
      );
      for (const { miss, error } of own) expect(Math.abs(miss)).toBeLessThan(Math.max(limit, 3 * error));
      // Stated errors that were too small would show here: 200 normal numbers have an rms of 1 ± 0.05; three times that.
      expect(rms(inErrors)).toBeLessThan(1.15);
      // Most of them meet the figure itself, or the errors are worth nothing.
      expect(sizes.filter((v) => Math.abs(v) < limit).length).toBeGreaterThan(0.95 * sizes.length);
    }
    console.log(`front-to-back [dB]: rms ${rms(beams).toFixed(3)}, most ${most(beams).toFixed(3)}`);
    console.log(`the hidden soil is among those the fit names in ${soilsRight} of 200`);
    expect(most(beams)).toBeLessThan(0.5);
    // Soils within three standard errors are named: 99.7 % of them, and one or two more by chance.
    expect(soilsRight).toBeGreaterThan(196);
  });

  test("twenty with reactance at the base as well: length and reactance are not told apart, and that is said; the beam is still known", () => {
    const even = evenNumbers(20);
    const beams: number[] = [];
    const lengths: number[] = [];
    for (let n = 0; n < 20; n++) {
      const garden = plantGarden({ ...usual, reactance_ohm: 5 }, even);
      const refit = refitted(garden);
      beams.push(refit.measured.frontToBack_dB - garden.frontToBack_dB);
      lengths.push(100 * (refit.elements[0]!.lengthFactor.value - garden.lengthFactor[0]!));
      const pairs = refit.alike.map(({ first, second }) => `${first}, ${second}`);
      expect(pairs).toContain("driven length, driven reactance");
      expect(refit.elements[0]!.reactance_ohm.from).toBe("assumed");
    }
    console.log(
      `with ±5 ohm: front-to-back [dB] rms ${rms(beams).toFixed(3)}, most ${most(beams).toFixed(3)}; length [%] rms ${rms(lengths).toFixed(2)}`,
    );
    expect(most(beams)).toBeLessThan(0.5);
    // 5 ohm are 0.7 % of length, at 700 ohm for the whole: were they told apart, this would be far smaller.
    expect(rms(lengths)).toBeGreaterThan(0.15);
  });
});
