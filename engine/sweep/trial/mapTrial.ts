import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { spacingOf } from "../../plan/edits/spacingOf.ts";
import { ok, type Result } from "../../result.ts";
import { wavelength_m } from "../../units.ts";
import type { ArrayChart } from "./ArrayChart.ts";
import type { ChartGoal } from "./ChartError.ts";
import { chartStep } from "./chartStep.ts";
import { checkPairTrial } from "./checkPairTrial.ts";
import { curvesOf } from "./curvesOf.ts";
import { directionsOf } from "./directionsOf.ts";
import type { Figures } from "./Figures.ts";
import { figuresReader } from "./figuresReader.ts";
import { indexOfMost } from "./indexOfMost.ts";
import { isPreview } from "./isPreview.ts";
import { lastOf } from "./lastOf.ts";
import type { MapMark, MapPicture } from "./MapPicture.ts";
import type { MapRequest } from "./MapRequest.ts";
import { pairAt } from "./pairAt.ts";
import { rangeValues } from "./rangeValues.ts";
import { spacingBreaks } from "./spacingBreaks.ts";
import type { Trial } from "./Trial.ts";
import { uprightCuts } from "./uprightCuts.ts";

/** A preview is off by far more than a chart of it that agrees to three times the usual goal. */
const PREVIEW_GOAL: ChartGoal = { ohm: 1, dB: 0.1, behind: 0.015 };

/**
 * The figures over spacing and the reflector's length, read from a chart of the port matrix and fields (`chartStep`, which
 * states its error): some fifty solves for any number of points. Where each figure is best is told to the map's points.
 *
 * Problems: see `checkPairTrial`.
 */
export function mapTrial(request: MapRequest): Result<Trial<MapPicture>> {
  const checked = checkPairTrial(request);
  if (!checked.ok) return checked;
  const plan = checked.value;
  const wavelength = wavelength_m(plan.frequency_MHz);
  const spacing_wl = rangeValues(request.spacing_wl);
  const spacing_m = spacing_wl.map((wl) => wl * wavelength);
  const reflectorHeight_m = rangeValues(request.reflectorHeight_m);
  const [from, to] = [spacing_m[0]!, spacing_m.at(-1)!];
  const directions = directionsOf(request.look);
  const read = figuresReader(request.look, directions);
  const uprightSegments = uprightCuts(plan);
  const chartRequest = {
    axes: [
      { from, to, breaks: spacingBreaks(plan, from, to) },
      { from: request.reflectorHeight_m.from, to: request.reflectorHeight_m.to },
    ],
    askAt: ([spacing_m, reflectorHeight_m]: readonly number[]) => ({
      plan: pairAt(plan, { spacing_m: spacing_m!, reflectorHeight_m: reflectorHeight_m! }),
      frequency_MHz: plan.frequency_MHz,
      directions,
      ...(uprightSegments && { uprightSegments }),
    }),
    ...(isPreview(plan) && { goal: PREVIEW_GOAL }),
    describe: ([spacing, length]: readonly number[]) =>
      `spacing ${spacing!.toFixed(2)} m, reflector ${length!.toFixed(2)} m`,
  };

  const drawn = lastOf((chart: ArrayChart): Pick<MapPicture, "figures" | "best"> => {
    const figures = new Array<Figures>(spacing_m.length * reflectorHeight_m.length);
    spacing_m.forEach((spacing, s) => {
      const column = chart.fix(spacing);
      reflectorHeight_m.forEach((height, h) => {
        figures[h * spacing_m.length + s] = read(plan.elements, column.sampleAt([height]));
      });
    });
    const curves = curvesOf(figures);
    const mark = (values: readonly number[], sign: 1 | -1): MapMark => {
      const at = indexOfMost(sign === 1 ? values : values.map((value) => -value));
      const [s, h] = [at % spacing_m.length, Math.floor(at / spacing_m.length)];
      return {
        spacing_wl: spacing_wl[s]!,
        spacing_m: spacing_m[s]!,
        reflectorHeight_m: reflectorHeight_m[h]!,
        value: values[at]!,
        isAtEdge: s === 0 || h === 0 || s === spacing_m.length - 1 || h === reflectorHeight_m.length - 1,
      };
    };
    return {
      figures: curves,
      best: {
        forward: mark(curves.forward_dBi, 1),
        frontToBack: mark(curves.frontToBack_dB, 1),
        frontToRear: mark(curves.frontToRear_dB, 1),
        swr: mark(curves.swr50, -1),
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
      get picture() {
        return (
          chart && {
            kind: "map" as const,
            isPreview: isPreview(plan),
            spacing_wl,
            spacing_m,
            reflectorHeight_m,
            ...drawn(chart),
            here: placeOf(request, wavelength),
            error,
          }
        );
      },
    });
  });
}

function placeOf({ plan, spacing_wl, reflectorHeight_m }: MapRequest, wavelength: number): MapPicture["here"] {
  const spacing_m = spacingOf(plan);
  const height = reflectorOf(plan)?.height_m;
  if (spacing_m === undefined || height === undefined) return null;
  const wl = spacing_m / wavelength;
  if (wl < spacing_wl.from || wl > spacing_wl.to) return null;
  if (height < reflectorHeight_m.from || height > reflectorHeight_m.to) return null;
  return { spacing_wl: wl, spacing_m, reflectorHeight_m: height };
}
