import type { ElementPlan } from "../../contract.ts";
import { readRung } from "../../readouts/readRung.ts";
import { swr } from "../../readouts/swr.ts";
import type { Directions } from "./arraySample.ts";
import { arrivalElevations } from "./arrivalElevations.ts";
import { baseCurrents } from "./baseCurrents.ts";
import type { Figures } from "./Figures.ts";
import type { SampleNumbers } from "./SampleNumbers.ts";
import type { TrialLook } from "./TrialLook.ts";

/** Figures of elements whose solve is known, by what their bases say. */
export type ReadFigures = (elements: readonly Pick<ElementPlan, "id" | "base">[], sample: SampleNumbers) => Figures;

/**
 * A reader of figures from samples: the base currents follow from the port matrix and the bases
 * (`baseCurrents`), and the gain in a direction is |Σ I f|² / Re Σ V I* over the fed bases, f the field of 1 A [√ohm]. Made once and used
 * for many samples: some microseconds each.
 *
 * @param directions those the samples were taken in
 * @throws RangeError when a direction of the look is not among them; when asked of samples of another shape
 */
export function figuresReader(look: TrialLook, directions: Directions): ReadFigures {
  const elevations = new Map(directions.elevations_deg.map((angle, i) => [angle, i]));
  const azimuths = new Map(directions.azimuths_deg.map((angle, i) => [angle, i]));
  const perPort = 4 * directions.elevations_deg.length * directions.azimuths_deg.length;
  const arriving = look.arrival_deg && arrivalElevations(look.arrival_deg);

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

    const powerGain = (elevation_deg: number, azimuth_deg: number): number => {
      const e = elevations.get(elevation_deg);
      const a = azimuths.get(azimuth_deg);
      if (e === undefined || a === undefined)
        throw new RangeError(`figuresReader: no field at elevation ${elevation_deg}, azimuth ${azimuth_deg}`);
      let size = 0;
      for (let c = 0; c < 4; c += 2) {
        let re = 0;
        let im = 0;
        for (let p = 0; p < P; p++) {
          const at = p * perPort + 4 * (e * directions.azimuths_deg.length + a) + c;
          re += amperes[2 * p]! * fields[at]! - amperes[2 * p + 1]! * fields[at + 1]!;
          im += amperes[2 * p]! * fields[at + 1]! + amperes[2 * p + 1]! * fields[at]!;
        }
        size += re * re + im * im;
      }
      return size / power;
    };
    const rung = readRung(
      (elevation, azimuth) => decibels(powerGain(elevation, azimuth)),
      look.pathElevation_deg,
      look.rearSector_deg,
    );
    const first = elements.findIndex(({ base }) => base.kind === "fed");
    return {
      feeds,
      baseCurrents: elements.map(({ id }, i) => ({ elementId: id, current: over(amperes, i, first) })),
      forward_dBi: rung.forward_dBi,
      back_dBi: rung.back_dBi,
      worstRear_dBi: rung.worstRear_dBi,
      worstRearAzimuth_deg: rung.worstRearAzimuth_deg,
      frontToBack_dB: rung.frontToBack_dB,
      frontToRear_dB: rung.frontToRear_dB,
      pathGain_dBi: arriving
        ? decibels(arriving.reduce((sum, at) => sum + at.weight * powerGain(at.elevation_deg, 0), 0))
        : null,
    };
  };
}

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
