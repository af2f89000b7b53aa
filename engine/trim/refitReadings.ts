import type { Plan } from "../contract.ts";
import { checkPlan } from "../plan/checkPlan.ts";
import { corePlan } from "../plan/edits/corePlan.ts";
import { withElementHeight } from "../plan/edits/withElementHeight.ts";
import { failed, ok, type Result } from "../result.ts";
import type { ArraySample } from "../sweep/trial/arraySample.ts";
import { type ChartRequest, chartStep } from "../sweep/trial/chartStep.ts";
import type { Trial, TrialAsk } from "../sweep/trial/Trial.ts";
import { type BenchRoles, benchRoles } from "./benchRoles.ts";
import { fitSoil, type SoilFit } from "./fitSoil.ts";
import { prepareReadings } from "./prepareReadings.ts";
import type { Refit, RefitRequest } from "./Refit.ts";
import type { RefitChart, RefitReading } from "./refitModel.ts";
import { refitResult } from "./refitResult.ts";
import { type SoilAround, soilsAround } from "./soilsAround.ts";

/** Effective lengths looked at beyond those that were cut and planned. */
const BEYOND = 0.065;
/** The least width of the frequencies looked at, about the plan's. */
const AROUND = 0.01;
const MOST_SOLVES = 500;

/**
 * A plan mended by readings: the trial of a fit. The engine is the model: the port matrix over both lengths and frequency,
 * interpolated with a checked error (`chartStep`), once for each soil that is tried; then least squares over effective
 * lengths, series R and X of each base and a scale of the mutual impedance (`leastSquares`), with what is held likely
 * beforehand as soft bounds (`refitModel`). The picture grows from the plan's own soil to all.
 *
 * Errors are standard errors by the curvature at the minimum, widened by the misfit where that is above 1 and by the
 * farthest of the soils that fit alike. Accuracy on invented gardens: see the tests.
 * Problems: those of the plan and its readings (`prepareReadings`); not exactly one fed element; from the trial itself
 * "no-fit" where the nearest fit is no antenna.
 */
export function refitReadings(request: RefitRequest): Result<Trial<Refit>> {
  const checked = checkPlan(request.plan);
  if (!checked.ok) return checked;
  const plan = corePlan(checked.value);
  const found = benchRoles(plan);
  if (!found.ok) return found;
  const roles = found.value;
  const prepared = prepareReadings(plan, roles, request);
  if (!prepared.ok) return prepared;
  const readings = prepared.value;

  const soils = request.trySoils ? soilsAround(plan.ground) : soilsAround(plan.ground).slice(0, 1);
  const ranges = rangesOf(plan, roles, readings);
  const directions = { elevations_deg: [request.elevation_deg], azimuths_deg: [0, 180] };
  const charts = soils.map(
    ({ ground }): ChartRequest => ({
      axes: [...ranges.lengths_m, ranges.frequency_MHz],
      askAt: (place) => ({
        plan: { ...withLengths(plan, roles, place.slice(0, -1)), ground },
        frequency_MHz: place.at(-1)!,
        directions,
      }),
      goal: { ohm: 0.1, dB: 0.03, behind: 0.005 },
      mostSolves: MOST_SOLVES,
    }),
  );
  const asPlanned: TrialAsk = { plan, frequency_MHz: plan.frequency_MHz, directions };
  /** Fits are kept from step to step: a chart that is done does not change. */
  const fits = new Map<SoilAround["id"], SoilFit>();

  return ok((known) => {
    const asks: TrialAsk[] = [];
    let part = 0;
    const planned = known(asPlanned);
    if (planned && !planned.ok) return planned;
    if (!planned) asks.push(asPlanned);
    const done: SoilFit[] = [];
    for (const [s, soil] of soils.entries()) {
      const kept = fits.get(soil.id);
      if (kept) {
        done.push(kept);
        part += 1;
        continue;
      }
      const step = chartStep(charts[s]!, known);
      if (!step.ok) return step;
      asks.push(...step.value.asks);
      part += step.value.part;
      if (step.value.asks.length > 0 || !step.value.chart) continue;
      const model: RefitChart = { chart: step.value.chart, lengths_m: ranges.lengths_m };
      const fit = fitSoil(soil, model, step.value.error.error_ohm, plan, roles, readings);
      fits.set(soil.id, fit);
      done.push(fit);
    }
    const first = planned?.ok ? (planned.value as ArraySample) : undefined;
    // The plan's own soil comes first, so that what is compared to it is there.
    const picture =
      first && done[0]?.soil.id === "planned" ? refitResult(request, plan, roles, readings, done, first) : null;
    if (picture && !Number.isFinite(picture.measured.forward_dBi + picture.measured.swr))
      return failed({
        code: "no-fit",
        where: "readings",
        message: `These readings fit no antenna of this plan's kind: the nearest takes no power at its feed, and misses them by ${picture.misfit.toPrecision(2)} times their uncertainty; up to about 2 times is usual. Check the state, the lengths and the frequencies of each.`,
      });
    return ok({ asks, picture, part: part / soils.length });
  });
}

function rangesOf(plan: Plan, roles: BenchRoles, readings: readonly RefitReading[]) {
  const role = roles.reflector === undefined ? [roles.driven] : [roles.driven, roles.reflector];
  const lengths_m = role.map((i, e) => {
    const all = [plan.elements[i]!.height_m, ...readings.map(({ cut_m }) => cut_m[e]!)];
    return { from: Math.min(...all) * (1 - BEYOND), to: Math.max(...all) * (1 + BEYOND) };
  });
  const f = plan.frequency_MHz;
  const all = readings.flatMap(({ points }) => points.map((p) => p.frequency_MHz));
  return {
    lengths_m,
    frequency_MHz: { from: Math.min(...all, f * (1 - AROUND)), to: Math.max(...all, f * (1 + AROUND)) },
  };
}

function withLengths(plan: Plan, roles: BenchRoles, lengths_m: readonly number[]): Plan {
  const role = roles.reflector === undefined ? [roles.driven] : [roles.driven, roles.reflector];
  return role.reduce((of, i, e) => withElementHeight(of, plan.elements[i]!.id, lengths_m[e]!), plan);
}
