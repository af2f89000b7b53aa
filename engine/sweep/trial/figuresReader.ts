import type { ElementPlan } from "../../contract.ts";
import { rearAzimuths } from "../../readouts/rearAzimuths.ts";
import { swr } from "../../readouts/swr.ts";
import type { Directions } from "./arraySample.ts";
import { arrivalElevations } from "./arrivalElevations.ts";
import { baseCurrents } from "./baseCurrents.ts";
import type { Figures } from "./Figures.ts";
import { directionCount, fieldPlace } from "./fieldPlace.ts";
import type { SampleNumbers } from "./SampleNumbers.ts";
import type { TrialLook } from "./TrialLook.ts";

/** Figures of elements whose solve is known, by what their bases say. */
export type ReadFigures = (elements: readonly Pick<ElementPlan, "id" | "base">[], sample: SampleNumbers) => Figures;

/**
 * A reader of figures from samples: the base currents follow from the port matrix and the bases (`baseCurrents`), and the
 * gain in a direction is |Σ I f|² / Re Σ V I* over the fed bases, f the field of 1 A [√ohm]. Made once and used for many
 * samples: some microseconds each.
 *
 * @param directions those the samples were taken in
 * @throws RangeError when a direction of the look is not among them; when asked of samples of another shape
 */
export function figuresReader(look: TrialLook, directions: Directions): ReadFigures {
  const perPort = 4 * directionCount(directions);
  const placeOf = (elevation_deg: number, azimuth_deg: number): number => {
    const place = fieldPlace(directions, elevation_deg, azimuth_deg);
    if (place < 0)
      throw new RangeError(`figuresReader: no field at elevation ${elevation_deg}, azimuth ${azimuth_deg}`);
    return 4 * place;
  };
  const [ahead, back] = [placeOf(look.pathElevation_deg, 0), placeOf(look.pathElevation_deg, 180)];
  const rear = rearAzimuths(look.rearSector_deg).map((azimuth_deg) => ({
    azimuth_deg: azimuth_deg > 180 ? azimuth_deg - 360 : azimuth_deg,
    place: placeOf(look.pathElevation_deg, azimuth_deg),
  }));
  const arriving =
    look.arrival_deg &&
    arrivalElevations(look.arrival_deg).map(({ elevation_deg, weight }) => ({
      weight,
      place: placeOf(elevation_deg, 0),
    }));

  return (elements, { impedance_ohm: z, fields }) => {
    const P = elements.length;
    if (z.length !== 2 * P * P || fields.length !== P * perPort)
      throw new RangeError(
        `figuresReader: ${z.length} and ${fields.length} numbers for ${P} elements; it takes ${2 * P * P} and ${P * perPort}`,
      );
    const amperes = baseCurrents(elements, z);
    let power = 0;
    const feeds: Figures["feeds"][number][] = [];
    elements.forEach(({ id, base }, i) => {
      if (base.kind !== "fed") return;
      let vRe = 0;
      let vIm = 0;
      for (let j = 0; j < P; j++) {
        const zr = z[2 * (i * P + j)]!;
        const zi = z[2 * (i * P + j) + 1]!;
        vRe += zr * amperes[2 * j]! - zi * amperes[2 * j + 1]!;
        vIm += zr * amperes[2 * j + 1]! + zi * amperes[2 * j]!;
      }
      const iRe = amperes[2 * i]!;
      const iIm = amperes[2 * i + 1]!;
      power += vRe * iRe + vIm * iIm;
      const size = iRe * iRe + iIm * iIm;
      const re = (vRe * iRe + vIm * iIm) / size;
      const im = (vIm * iRe - vRe * iIm) / size;
      feeds.push({ elementId: id, impedance_ohm: { re, im }, swr50: swr(re, im, 50) });
    });

    const gain = (place: number): number => {
      let size = 0;
      for (let c = 0; c < 4; c += 2) {
        let re = 0;
        let im = 0;
        for (let p = 0; p < P; p++) {
          const at = p * perPort + place + c;
          re += amperes[2 * p]! * fields[at]! - amperes[2 * p + 1]! * fields[at + 1]!;
          im += amperes[2 * p]! * fields[at + 1]! + amperes[2 * p + 1]! * fields[at]!;
        }
        size += re * re + im * im;
      }
      return size / power;
    };
    const forward_dBi = decibels(gain(ahead));
    const back_dBi = decibels(gain(back));
    let loudest = gain(back);
    let worstRearAzimuth_deg = 180;
    for (const { azimuth_deg, place } of rear) {
      const g = gain(place);
      // Where two are alike the first counts, whatever the last place of each: as in `readRung`.
      if (g > loudest * ALIKE) {
        loudest = g;
        worstRearAzimuth_deg = azimuth_deg;
      }
    }
    const worstRear_dBi = decibels(loudest);
    const first = elements.findIndex(({ base }) => base.kind === "fed");
    return {
      feeds,
      baseCurrents: elements.map(({ id }, i) => ({ elementId: id, current: over(amperes, i, first) })),
      forward_dBi,
      back_dBi,
      worstRear_dBi,
      worstRearAzimuth_deg,
      frontToBack_dB: forward_dBi - back_dBi,
      frontToRear_dB: forward_dBi - worstRear_dBi,
      pathGain_dBi: arriving ? decibels(arriving.reduce((sum, at) => sum + at.weight * gain(at.place), 0)) : null,
    };
  };
}

/** 1e-9 dB. */
const ALIKE = 10 ** 1e-10;

const decibels = (ratio: number) => (ratio === 0 ? Number.NEGATIVE_INFINITY : 10 * Math.log10(ratio));

function over(amperes: Float64Array, i: number, first: number) {
  const re = amperes[2 * first]!;
  const im = amperes[2 * first + 1]!;
  const d = re * re + im * im;
  return {
    re: (amperes[2 * i]! * re + amperes[2 * i + 1]! * im) / d,
    im: (amperes[2 * i + 1]! * re - amperes[2 * i]! * im) / d,
  };
}
