import type { BenchReading, BenchState, Plan } from "../../engine/index.ts";
import { arrayFigures, arraySample } from "../../engine/index.ts";
import { matrixOf } from "../../engine/trim/matrixCurve.ts";
import { meterReading } from "../../engine/trim/meterReading.ts";
import { type SoilAround, soilsAround } from "../../engine/trim/soilsAround.ts";
import { okValue } from "./okValue.ts";

/** What is true of an invented garden and hidden from the fit. */
export interface Garden {
  readonly soil: SoilAround;
  readonly lengthFactor: readonly number[];
  readonly resistance_ohm: readonly number[];
  readonly reactance_ohm: readonly number[];
  readonly readings: readonly BenchReading[];
  /** Mutual impedance at the plan's frequency, and front-to-back there. */
  readonly mutual_ohm: { readonly re: number; readonly im: number };
  readonly frontToBack_dB: number;
}

export interface GardenRequest {
  readonly plan: Plan;
  readonly elevation_deg: number;
  readonly frequencies_MHz: readonly number[];
  readonly length_part: number;
  readonly resistance_ohm: number;
  readonly reactance_ohm: number;
  readonly noise: { readonly part: number; readonly ohm: number };
  readonly soils: readonly SoilAround["id"][];
}

/** Even numbers from 0 to 1, the same from the same seed (mulberry32, T. Ettinger, public domain). */
export function evenNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A normal number of variance one (Box and Muller). */
export const normalNumber = (even: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());

const states: readonly BenchState[] = ["driven-alone", "reflector-alone", "reflector-joined"];

/** One invented garden with its readings, by solves of the engine at its true lengths in its true soil; never by the fit's own model. */
export function plantGarden(request: GardenRequest, even: () => number): Garden {
  const { plan, noise, elevation_deg } = request;
  const id = request.soils[Math.floor(even() * request.soils.length)]!;
  const soil = soilsAround(plan.ground).find((one) => one.id === id)!;
  const each = (of: () => number) => plan.elements.map(of);
  const lengthFactor = each(() => 1 + request.length_part * (2 * even() - 1));
  const resistance_ohm = each(() => request.resistance_ohm * even());
  const reactance_ohm = each(() => request.reactance_ohm * (2 * even() - 1));
  const truth: Plan = {
    ...plan,
    ground: soil.ground,
    elements: plan.elements.map((element, i) => ({
      ...element,
      height_m: element.height_m * lengthFactor[i]!,
      baseSeries: { resistance_ohm: resistance_ohm[i]!, reactance_ohm: reactance_ohm[i]! },
    })),
  };
  const directions = { elevations_deg: [elevation_deg], azimuths_deg: [0, 180] };
  const samples = request.frequencies_MHz.map((frequency_MHz) =>
    okValue(arraySample({ plan: truth, frequency_MHz, directions })),
  );
  const roles = { driven: 0, reflector: 1 };
  const lengths_m = { driven_m: plan.elements[0]!.height_m, reflector_m: plan.elements[1]!.height_m };
  const readings = states.map(
    (state): BenchReading => ({
      id: state,
      state,
      date: "2026-05-01",
      lengths_m,
      at: "base",
      points: samples.map((sample) => {
        const { re, im } = meterReading(plan, roles, matrixOf(sample), state).impedance_ohm;
        const spread = Math.hypot(noise.ohm, noise.part * Math.hypot(re, im));
        return {
          frequency_MHz: sample.frequency_MHz,
          resistance_ohm: re + spread * normalNumber(even),
          reactance_ohm: im + spread * normalNumber(even),
        };
      }),
    }),
  );
  const middle = samples.find(({ frequency_MHz }) => frequency_MHz === plan.frequency_MHz)!;
  const look = { pathElevation_deg: elevation_deg, rearSector_deg: 0 };
  return {
    soil,
    lengthFactor,
    resistance_ohm,
    reactance_ohm,
    readings,
    mutual_ohm: matrixOf(middle)[0]![1]!,
    frontToBack_dB: arrayFigures(plan, middle, { look, directions }).frontToBack_dB,
  };
}
