import {
  interestOf,
  limits,
  type Plan,
  reflectorOf,
  type SavedPlan,
  type SoilConstants,
  type TrialLook,
  type TrialRequest,
  wavelength_m,
} from "../../../engine/index.ts";
import { bandSpan } from "../bandSpan.ts";
import { rungsFor } from "../readoutRequest.ts";
import type { TrialChoices } from "./TrialChoices.ts";
import type { TrialKind } from "./TrialRun.ts";

/** Fine enough to draw, and to land within a centimetre or two of what is best. */
const points = { pace: 91, map: 60, band: 81 } as const;

/** What a trial of a kind asks of a plan as the engine is given it (`plan`), the rest being as the saved plan has it. */
export function trialRequest(kind: TrialKind, saved: SavedPlan, plan: Plan, choices: TrialChoices): TrialRequest {
  const look = lookAt(saved, choices);
  const lambda = wavelength_m(saved.frequency_MHz);
  switch (kind) {
    case "pace": {
      const { from_wl, to_wl, lengths } = choices.pace;
      return { kind, plan, look, spacing_wl: { from: from_wl, to: to_wl, points: points.pace }, lengths };
    }
    case "map": {
      const { from_wl, to_wl, less, more } = choices.map;
      const own_m = reflectorOf(saved)?.height_m ?? 0.25 * lambda;
      return {
        kind,
        plan,
        look,
        spacing_wl: { from: from_wl, to: to_wl, points: points.map },
        reflectorHeight_m: { from: own_m * (1 - less), to: own_m * (1 + more), points: points.map },
      };
    }
    case "band": {
      const { beyond, ...good } = choices.band;
      const { from_MHz, to_MHz } = bandSpan(saved.band, saved.frequency_MHz);
      const more_MHz = (beyond * (from_MHz + to_MHz)) / 2;
      return {
        kind,
        plan,
        look,
        frequency_MHz: {
          from: Math.min(from_MHz, saved.frequency_MHz) - more_MHz,
          to: Math.max(to_MHz, saved.frequency_MHz) + more_MHz,
          points: points.band,
        },
        good,
      };
    }
    case "best": {
      const { weights, driven_wl, reflector_wl, spacing_wl, coil_ohm, wire_m, swr, seed } = choices.best;
      const between = ([least, most]: readonly [number, number]) => ({ least: least * lambda, most: most * lambda });
      const { from_MHz, to_MHz } = bandSpan(saved.band, saved.frequency_MHz);
      return {
        kind,
        plan,
        look,
        segment_MHz: { from: from_MHz, to: to_MHz },
        weights,
        bounds: {
          driven_m: between(driven_wl),
          reflector_m: between(reflector_wl),
          spacing_m: between(spacing_wl),
          coil_ohm: { least: 0, most: coil_ohm },
          ...(wire_m !== null && { wire_m }),
          swr,
        },
        seed,
      };
    }
    case "radials": {
      const { wire_m, raised_m } = choices.radials;
      const own_m = saved.elements[0]?.radials.height_m ?? 0;
      const heights_m = raised_m === null || raised_m === own_m ? [own_m] : [own_m, raised_m];
      return { kind, plan, look, wire_m: wire_m ?? radialWire_m(saved), heights_m };
    }
    case "tolerance": {
      const { soil, draws, ...errors } = choices.tolerance;
      return {
        kind,
        plan,
        look,
        rungs_deg: rungsFor(look.pathElevation_deg),
        azimuthCutElevation_deg: interestOf(saved).azimuthCutElevation_deg,
        errors,
        ...(saved.ground.kind === "soil" &&
          soil > 1 && { soil: { dry: soilTimes(saved.ground, 1 / soil), wet: soilTimes(saved.ground, soil) } }),
        draws,
        seed: 1,
      };
    }
  }
}

/** The angles at which signals are taken to arrive where the person has not said. */
export function arrivalOf(saved: SavedPlan, { arrival }: Pick<TrialChoices, "arrival">) {
  const { elevation_deg } = interestOf(saved);
  return arrival ?? { from_deg: Math.max(1, elevation_deg - 4), to_deg: Math.min(89, elevation_deg + 6) };
}

/** All the wire that lies as radials. */
export function radialWire_m({ elements }: Plan): number {
  return elements.reduce((sum, { radials }) => {
    const each = radials.each?.reduce((own, one) => own + one.length_m, 0);
    return sum + (each ?? radials.count * radials.length_m);
  }, 0);
}

function lookAt(saved: SavedPlan, choices: TrialChoices): TrialLook {
  const { elevation_deg, rearSector_deg } = interestOf(saved);
  const { from_deg, to_deg } = arrivalOf(saved, choices);
  return {
    pathElevation_deg: elevation_deg,
    rearSector_deg,
    arrival_deg: { from: from_deg, to: to_deg },
  };
}

/** Wetter by a factor in conductivity and by its root in permittivity, within what a plan may hold. */
function soilTimes(soil: SoilConstants, factor: number): SoilConstants {
  const { least, most } = limits.soilPermittivity;
  return {
    relativePermittivity: Math.min(most, Math.max(least, soil.relativePermittivity * Math.sqrt(factor))),
    conductivity_SPerM: Math.min(limits.soilConductivity_SPerM.most, soil.conductivity_SPerM * factor),
  };
}
