import type { ArraySample, Directions } from "../trial/arraySample.ts";
import type { Figures } from "../trial/Figures.ts";
import { directionCount } from "../trial/fieldPlace.ts";
import type { Hemisphere } from "./hemisphere.ts";

/**
 * Part of the input that leaves through the upper half space [0..1]: Σ w |Σ I f|² / Σ |I|² R, the gain summed over a
 * hemisphere, from a solve and the base currents its figures name.
 *
 * Accuracy: within 2e-6 of the input over ordinary soils for two elements up to half a wavelength apart on radials up to half a
 * wavelength, within 2e-4 over sea water, where the pattern turns fastest at the horizon (tests hold both against the
 * readout's own sum).
 *
 * @throws RangeError when the sample lacks a direction of the hemisphere
 */
export function radiatedPart(
  sample: Pick<ArraySample, "fields">,
  figures: Pick<Figures, "feeds" | "baseCurrents">,
  directions: Directions,
  { elevations_deg, weights, azimuths_deg }: Hemisphere,
): number {
  const { fields } = sample;
  const across = directions.azimuths_deg.length;
  const perPort = 4 * directionCount(directions);
  const currents = figures.baseCurrents.map(({ current }) => current);
  const place = (list: readonly number[], angle: number) => {
    const i = list.indexOf(angle);
    if (i < 0) throw new RangeError(`radiatedPart: no field at ${angle} degrees`);
    return i;
  };
  const columns = azimuths_deg.map((angle) => place(directions.azimuths_deg, angle));
  let radiated = 0;
  elevations_deg.forEach((angle, i) => {
    const row = place(directions.elevations_deg, angle);
    let ring = 0;
    for (const column of columns)
      for (let c = 0; c < 4; c += 2) {
        let re = 0;
        let im = 0;
        for (let p = 0; p < currents.length; p++) {
          const at = p * perPort + 4 * (row * across + column) + c;
          const { re: a, im: b } = currents[p]!;
          re += a * fields[at]! - b * fields[at + 1]!;
          im += a * fields[at + 1]! + b * fields[at]!;
        }
        ring += re * re + im * im;
      }
    radiated += (weights[i]! * ring) / columns.length;
  });
  const input = figures.feeds.reduce((sum, { elementId, impedance_ohm }) => {
    const { re, im } = figures.baseCurrents.find((base) => base.elementId === elementId)!.current;
    return sum + (re * re + im * im) * impedance_ohm.re;
  }, 0);
  return radiated / input;
}
