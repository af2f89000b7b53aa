import type { Plan } from "../../contract.ts";
import { drivenOf } from "../../plan/edits/drivenOf.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { spacingOf } from "../../plan/edits/spacingOf.ts";
import { limits } from "../../plan/limits.ts";
import { ok, type Result } from "../../result.ts";
import { wavelength_m } from "../../units.ts";
import type { ArrayChart } from "./ArrayChart.ts";
import { chartStep } from "./chartStep.ts";
import { checkPairTrial } from "./checkPairTrial.ts";
import { curvesOf } from "./curvesOf.ts";
import { directionsOf } from "./directionsOf.ts";
import type { Figures } from "./Figures.ts";
import { fieldPlaces } from "./fieldPlaces.ts";
import { figuresReader } from "./figuresReader.ts";
import { indexOfMost } from "./indexOfMost.ts";
import { isPreview } from "./isPreview.ts";
import { lastOf } from "./lastOf.ts";
import type { PacePicture } from "./PacePicture.ts";
import type { PaceRequest } from "./PaceRequest.ts";
import { pairAt } from "./pairAt.ts";
import { rangeValues } from "./rangeValues.ts";
import { type Retuned, retuned } from "./retuned.ts";
import { spacingBreaks } from "./spacingBreaks.ts";
import type { Trial } from "./Trial.ts";
import { uprightCuts } from "./uprightCuts.ts";

/** How far lengths may move, in parts of what they are. Coupling moves the driven's resonance by a few per cent. */
const REFLECTOR_PART = 0.08;
const DRIVEN_PART = 0.1;

/**
 * The figures along a walk of the reflector away from the driven, lengths fixed or tuned anew at each step, read from a
 * chart of the port matrix and fields (`chartStep`, which states its error).
 *
 * Problems: see `checkPairTrial`.
 */
export function paceTrial(request: PaceRequest): Result<Trial<PacePicture>> {
  const checked = checkPairTrial(request);
  if (!checked.ok) return checked;
  const plan = checked.value;
  const driven = drivenOf(plan)!;
  const reflector = reflectorOf(plan)!;
  const wavelength = wavelength_m(plan.frequency_MHz);
  const spacing_wl = rangeValues(request.spacing_wl);
  const spacing_m = spacing_wl.map((wl) => wl * wavelength);
  const [from, to] = [spacing_m[0]!, spacing_m.at(-1)!];
  const directions = directionsOf(request.look);
  const read = figuresReader(request.look, directions);
  // To tune by, ahead and straight back are enough.
  const along = { elevations_deg: [request.look.pathElevation_deg], azimuths_deg: [0, 180] };
  const alongPlaces = fieldPlaces(directions, along, plan.elements.length);
  const { pathElevation_deg } = request.look;
  const readAlong = figuresReader({ pathElevation_deg, rearSector_deg: 0 }, along);
  const isRetuned = request.lengths === "retuned";
  const drivenRange = lengthsAround(driven.height_m, DRIVEN_PART, wavelength);
  const reflectorRange = lengthsAround(reflector.height_m, REFLECTOR_PART, wavelength);
  const walk = { from, to, breaks: spacingBreaks(plan, from, to) };
  const uprightSegments = uprightCuts(plan);
  const chartRequest = {
    axes: isRetuned ? [walk, drivenRange, reflectorRange] : [walk],
    askAt: ([spacing, drivenHeight, reflectorHeight]: readonly number[]) => ({
      plan: pairAt(plan, {
        spacing_m: spacing!,
        ...(drivenHeight !== undefined && { drivenHeight_m: drivenHeight }),
        ...(reflectorHeight !== undefined && { reflectorHeight_m: reflectorHeight }),
      }),
      frequency_MHz: plan.frequency_MHz,
      directions,
      ...(uprightSegments && { uprightSegments }),
    }),
    describe: ([spacing]: readonly number[]) => `spacing ${spacing!.toFixed(2)} m`,
  };

  const drawn = lastOf((chart: ArrayChart) => {
    const tuned: Retuned[] = [];
    const figures = spacing_m.map((spacing): Figures => {
      if (!isRetuned) return read(plan.elements, chart.sampleAt([spacing]));
      const there = chart.fix(spacing);
      const lengths = retuned(there.pick(alongPlaces), plan.elements, readAlong, drivenRange, reflectorRange);
      tuned.push(lengths);
      return read(plan.elements, there.sampleAt([lengths.driven_m, lengths.reflector_m]));
    });
    const curves = curvesOf(figures);
    return {
      figures: curves,
      drivenHeight_m: spacing_m.map((_, i) => tuned[i]?.driven_m ?? driven.height_m),
      reflectorHeight_m: spacing_m.map((_, i) => tuned[i]?.reflector_m ?? reflector.height_m),
      ...(isRetuned && { atLimit: tuned.flatMap(({ isAtLimit }, i) => (isAtLimit ? [i] : [])) }),
      best: {
        frontToBack: indexOfMost(curves.frontToBack_dB),
        frontToRear: indexOfMost(curves.frontToRear_dB),
        forward: indexOfMost(curves.forward_dBi),
      },
    };
  });

  return ok((known) => {
    const step = chartStep(chartRequest, known);
    if (!step.ok) return step;
    const { asks, chart, error, part } = step.value;
    return ok({
      asks,
      part,
      picture: chart && {
        kind: "pace",
        isPreview: isPreview(plan),
        spacing_wl,
        spacing_m,
        ...drawn(chart),
        here_wl: hereOn(request, plan, wavelength),
        error,
      },
    });
  });
}

function lengthsAround(height_m: number, part: number, wavelength: number) {
  const { least, most } = limits.height_wl;
  return {
    from: Math.max(height_m * (1 - part), least * wavelength),
    to: Math.min(height_m * (1 + part), most * wavelength, limits.length_m),
  };
}

function hereOn({ spacing_wl }: PaceRequest, plan: Plan, wavelength: number): number | null {
  const spacing_m = spacingOf(plan);
  if (spacing_m === undefined) return null;
  const wl = spacing_m / wavelength;
  return wl >= spacing_wl.from && wl <= spacing_wl.to ? wl : null;
}
