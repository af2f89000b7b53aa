import type { Complex, ElementPlan } from "../../contract.ts";
import { rearAzimuths } from "../../readouts/rearAzimuths.ts";
import { swr } from "../../readouts/swr.ts";
import { gainsOf } from "../best/bestReader.ts";
import type { Directions } from "../trial/arraySample.ts";
import type { SampleNumbers } from "../trial/SampleNumbers.ts";
import type { ToleranceFigures } from "./TolerancePicture.ts";
import type { ToleranceRequest } from "./ToleranceRequest.ts";

/** Azimuths all round; a pair's power holds harmonics to about 2k times its reach, 13 for a wavelength across. */
const AZIMUTHS = 36;
/** Elevations of the cut: closer where soil turns the pattern. */
const CUT_DEG = [1, 2, 4, 6, 8, 10, 13, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90];
const STEP_DEG = 5;
/** What rounding makes of nothing: gain is told down to here. */
const LEAST = 1e-12;

/** A pattern seen from a path that lies `off_deg` from where it was thought to lie. */
export interface Pattern {
  readonly figures: ToleranceFigures;
  readonly ladder: readonly { readonly forward_dBi: number; readonly back_dBi: number }[];
  readonly elevationCut_dBi: readonly number[];
  readonly azimuthCut_dBi: readonly number[];
}

export interface PatternReader {
  readonly directions: Directions;
  readonly elevationCut_deg: readonly number[];
  readonly azimuthCut_deg: readonly number[];
  figures(elements: readonly Pick<ElementPlan, "base">[], sample: SampleNumbers, off_deg: number): ToleranceFigures;
  whole(elements: readonly Pick<ElementPlan, "base">[], sample: SampleNumbers, off_deg: number): Pattern;
}

/**
 * Reads figures, ladder and cuts of a sample in any heading: between 36 azimuths power is the trigonometric polynomial
 * through them, p(φ) = Σ pⱼ sin(Nθ/2)/(N tan(θ/2)), θ = φ − φⱼ, exact for harmonics below 18.
 */
export function patternReader(
  request: Pick<ToleranceRequest, "look" | "rungs_deg" | "azimuthCutElevation_deg">,
): PatternReader {
  const { look, rungs_deg, azimuthCutElevation_deg } = request;
  const path_deg = look.pathElevation_deg;
  const elevations_deg = [...new Set([path_deg, azimuthCutElevation_deg, ...rungs_deg, ...CUT_DEG])];
  const azimuths_deg = Array.from({ length: AZIMUTHS }, (_, i) => (360 / AZIMUTHS) * i);
  const behind = rearAzimuths(look.rearSector_deg);
  const azimuthCut_deg = Array.from({ length: 360 / STEP_DEG + 1 }, (_, i) => -180 + STEP_DEG * i);

  const read = (elements: readonly Pick<ElementPlan, "base">[], sample: SampleNumbers) => {
    const { gains, impedance_ohm } = gainsOf(elements, sample);
    const level = (elevation_deg: number, weights: Float64Array) => {
      const from = elevations_deg.indexOf(elevation_deg) * AZIMUTHS;
      let power = 0;
      for (let j = 0; j < AZIMUTHS; j++) power += weights[j]! * gains[from + j]!;
      return 10 * Math.log10(Math.max(LEAST, power));
    };
    return { level, impedance_ohm };
  };
  type Read = ReturnType<typeof read>;
  const figuresOf = ({ level, impedance_ohm }: Read, off_deg: number): ToleranceFigures => {
    const forward_dBi = level(path_deg, weightsAt(-off_deg));
    const back_dBi = level(path_deg, weightsAt(180 - off_deg));
    const rear_dBi = behind.reduce(
      (most, azimuth) => Math.max(most, level(path_deg, weightsAt(azimuth - off_deg))),
      back_dBi,
    );
    const { re, im }: Complex = impedance_ohm;
    return {
      forward_dBi,
      frontToBack_dB: forward_dBi - back_dBi,
      frontToRear_dB: forward_dBi - rear_dBi,
      resistance_ohm: re,
      reactance_ohm: im,
      swr50: swr(re, im, 50),
    };
  };
  return {
    directions: { elevations_deg, azimuths_deg },
    elevationCut_deg: [
      ...CUT_DEG,
      ...CUT_DEG.slice(0, -1)
        .map((angle) => 180 - angle)
        .reverse(),
    ],
    azimuthCut_deg,
    figures: (elements, sample, off_deg) => figuresOf(read(elements, sample), off_deg),
    whole(elements, sample, off_deg) {
      const known = read(elements, sample);
      const { level } = known;
      const [ahead, back] = [weightsAt(-off_deg), weightsAt(180 - off_deg)];
      return {
        figures: figuresOf(known, off_deg),
        ladder: rungs_deg.map((angle) => ({ forward_dBi: level(angle, ahead), back_dBi: level(angle, back) })),
        elevationCut_dBi: [
          ...CUT_DEG.map((angle) => level(angle, ahead)),
          ...CUT_DEG.slice(0, -1)
            .map((angle) => level(angle, back))
            .reverse(),
        ],
        azimuthCut_dBi: azimuthCut_deg.map((angle) => level(azimuthCutElevation_deg, weightsAt(angle - off_deg))),
      };
    },
  };
}

/** Weights by which 36 powers make that at one azimuth. */
function weightsAt(azimuth_deg: number): Float64Array {
  const out = new Float64Array(AZIMUTHS);
  const turn = azimuth_deg / (360 / AZIMUTHS);
  const nearest = Math.round(turn);
  if (Math.abs(turn - nearest) < 1e-9) {
    out[((nearest % AZIMUTHS) + AZIMUTHS) % AZIMUTHS] = 1;
    return out;
  }
  // sin(Nθ/2) is the same for all but its sign.
  const wave = Math.sin(Math.PI * (turn - nearest)) * (nearest % 2 === 0 ? 1 : -1);
  for (let j = 0; j < AZIMUTHS; j++)
    out[j] = (wave * (j % 2 === 0 ? 1 : -1)) / (AZIMUTHS * Math.tan((Math.PI * (turn - j)) / AZIMUTHS));
  return out;
}
