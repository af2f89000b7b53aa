import type { ElementPlan } from "../../contract.ts";
import type { Directions } from "./arraySample.ts";
import { baseCurrents } from "./baseCurrents.ts";
import type { ChartGoal } from "./ChartError.ts";
import { directionCount } from "./fieldPlace.ts";
import type { SampleNumbers } from "./SampleNumbers.ts";

/** A large impedance need agree to this part of it only. */
const AGREED_PART = 0.01;

export interface SampleError {
  readonly error_ohm: number;
  readonly error_dB: number;
  readonly errorBehind: number;
  /** The worst of them in goals: up to 1 is agreed. */
  readonly inGoals: number;
}

/**
 * How far an interpolated sample is from the solved one, seen by what the bases make of both: feed impedance; gain ahead at
 * the first elevation, as the whole difference of the fields per ampere of the first fed base, whatever its phase, and of
 * the power's resistance; field at the other azimuths over that ahead.
 *
 * The impedance is agreed to the goal or to 1 %, whichever is more.
 */
export function compareSamples(
  elements: readonly Pick<ElementPlan, "base">[],
  interpolated: SampleNumbers,
  solved: SampleNumbers,
  directions: Directions,
  goal: ChartGoal,
): SampleError {
  const one = perAmpere(elements, interpolated, directions);
  const other = perAmpere(elements, solved, directions);
  let error_ohm = 0;
  let inGoals = 0;
  for (let f = 0; f < one.feeds.length; f += 2) {
    const [re, im] = [other.feeds[f]!, other.feeds[f + 1]!];
    const away = Math.sqrt((one.feeds[f]! - re) ** 2 + (one.feeds[f + 1]! - im) ** 2);
    error_ohm = Math.max(error_ohm, away);
    inGoals = Math.max(inGoals, away / Math.max(goal.ohm, AGREED_PART * Math.sqrt(re * re + im * im)));
  }
  const ahead = size(other.fields, 0);
  const difference = other.fields.map((v, i) => v - one.fields[i]!);
  const error_dB =
    20 * Math.log10(1 + size(difference, 0) / ahead) +
    Math.abs(10 * Math.log10(one.resistance_ohm / other.resistance_ohm));
  let errorBehind = 0;
  for (let a = 1; a < directions.azimuths_deg.length; a++)
    errorBehind = Math.max(errorBehind, size(difference, 4 * a) / ahead);
  inGoals = Math.max(inGoals, error_dB / goal.dB, errorBehind / goal.behind);
  // A figure that is not finite agrees with nothing.
  return { error_ohm, error_dB, errorBehind, inGoals: Number.isFinite(inGoals) ? inGoals : Number.POSITIVE_INFINITY };
}

const size = (fields: Float64Array, at: number) =>
  Math.sqrt(fields[at]! ** 2 + fields[at + 1]! ** 2 + fields[at + 2]! ** 2 + fields[at + 3]! ** 2);

/** Impedances of the fed bases, and fields at the first elevation and power over the first fed base's current. */
function perAmpere(
  elements: readonly Pick<ElementPlan, "base">[],
  { impedance_ohm: z, fields }: SampleNumbers,
  directions: Directions,
) {
  const P = elements.length;
  const amperes = baseCurrents(elements, z);
  const first = elements.findIndex(({ base }) => base.kind === "fed");
  const [fRe, fIm] = [amperes[2 * first]!, amperes[2 * first + 1]!];
  const square = fRe * fRe + fIm * fIm;
  const feeds: number[] = [];
  let power = 0;
  elements.forEach(({ base }, i) => {
    if (base.kind !== "fed") return;
    let re = 0;
    let im = 0;
    for (let j = 0; j < P; j++) {
      const [zr, zi] = [z[2 * (i * P + j)]!, z[2 * (i * P + j) + 1]!];
      re += zr * amperes[2 * j]! - zi * amperes[2 * j + 1]!;
      im += zr * amperes[2 * j + 1]! + zi * amperes[2 * j]!;
    }
    const [iRe, iIm] = [amperes[2 * i]!, amperes[2 * i + 1]!];
    const own = iRe * iRe + iIm * iIm;
    power += re * iRe + im * iIm;
    feeds.push((re * iRe + im * iIm) / own, (im * iRe - re * iIm) / own);
  });
  const out = new Float64Array(4 * directions.azimuths_deg.length);
  const perPort = 4 * directionCount(directions);
  for (let p = 0; p < P; p++) {
    const re = (amperes[2 * p]! * fRe + amperes[2 * p + 1]! * fIm) / square;
    const im = (amperes[2 * p + 1]! * fRe - amperes[2 * p]! * fIm) / square;
    const from = p * perPort;
    for (let c = 0; c < out.length; c += 2) {
      const [a, b] = [fields[from + c]!, fields[from + c + 1]!];
      out[c]! += re * a - im * b;
      out[c + 1]! += re * b + im * a;
    }
  }
  return { feeds, fields: out, resistance_ohm: power / square };
}
