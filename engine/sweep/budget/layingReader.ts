import type { Plan } from "../../contract.ts";
import type { ArraySample, Directions } from "../trial/arraySample.ts";
import { directionsOf } from "../trial/directionsOf.ts";
import { figuresReader } from "../trial/figuresReader.ts";
import type { TrialAsk } from "../trial/Trial.ts";
import type { TrialLook } from "../trial/TrialLook.ts";
import { hemisphere } from "./hemisphere.ts";
import { type Lay, wireOf } from "./layingsToTry.ts";
import type { RadialLaying } from "./RadialsPicture.ts";
import { radiatedPart } from "./radiatedPart.ts";

export interface LayingReader {
  /** The solve that tells what a plan's radials do. */
  readonly ask: (plan: Plan) => TrialAsk;
  readonly read: (plan: Plan, lay: Lay, sample: ArraySample) => RadialLaying;
}

/** Asks for, and reads, what radials do: gain ahead at the path's elevation, front to back, and what is not radiated. */
export function layingReader(look: TrialLook): LayingReader {
  const ring = hemisphere();
  const seen = directionsOf(look);
  const directions: Directions = {
    elevations_deg: [...new Set([...seen.elevations_deg, ...ring.elevations_deg])],
    azimuths_deg: [...new Set([...seen.azimuths_deg, ...ring.azimuths_deg])],
    ...(seen.ahead_deg && { ahead_deg: seen.ahead_deg }),
  };
  const figuresOf = figuresReader(look, directions);
  return {
    ask: (plan) => ({ plan, frequency_MHz: plan.frequency_MHz, directions }),
    read(plan, lay, sample) {
      const figures = figuresOf(plan.elements, sample);
      const [feed] = figures.feeds;
      return {
        ...lay,
        wire_m: wireOf(lay),
        forward_dBi: figures.forward_dBi,
        ...(plan.elements.length > 1 && {
          frontToBack_dB: figures.frontToBack_dB,
          frontToRear_dB: figures.frontToRear_dB,
        }),
        loss_dB: -10 * Math.log10(radiatedPart(sample, figures, directions, ring)),
        resistance_ohm: feed!.impedance_ohm.re,
        reactance_ohm: feed!.impedance_ohm.im,
        swr50: feed!.swr50,
      };
    },
  };
}
