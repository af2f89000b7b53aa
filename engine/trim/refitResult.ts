import type { Complex, Plan } from "../contract.ts";
import { cx } from "../network/cx.ts";
import type { BenchState } from "../plan/PlanBench.ts";
import type { ArraySample } from "../sweep/trial/arraySample.ts";
import { figuresReader } from "../sweep/trial/figuresReader.ts";
import type { SampleNumbers } from "../sweep/trial/SampleNumbers.ts";
import type { BenchRoles } from "./benchRoles.ts";
import { directMutual } from "./directMutual.ts";
import type { SoilFit } from "./fitSoil.ts";
import { nextCut } from "./nextCut.ts";
import type { Alike, Estimate, Refit, RefitFigures, RefitRequest } from "./Refit.ts";
import { readingAt } from "./readingAt.ts";
import { matrixAt, type RefitReading, unpackParameters } from "./refitModel.ts";

/** Soils whose sums of squares differ by less than this are not told apart: three standard errors. */
const TOLD = 9;
/** An estimate whose error has not come below this part of what was held likely rests on that. */
const FROM_READINGS = 0.6;
const ALIKE = 0.9;

/**
 * Errors of a fit's values: by the curvature, widened by the misfit where that is above 1, and by the farthest of the
 * soils that fit alike, since any of them may be the one.
 */
export function fittedErrors(best: SoilFit, alike: readonly SoilFit[]): number[] {
  const widened = Math.max(1, best.misfit) ** 2;
  const P = best.values.length;
  return Array.from(best.values, (value, i) => {
    const between = Math.max(0, ...alike.map((fit) => (fit.values[i]! - value) ** 2));
    return Math.sqrt(widened * best.covariance[i * P + i]! + between);
  });
}

/** Everything a refit tells, from the fits there are so far. @param planned a solve of the plan as it was planned */
export function refitResult(
  request: RefitRequest,
  plan: Plan,
  roles: BenchRoles,
  readings: readonly RefitReading[],
  fits: readonly SoilFit[],
  planned: ArraySample,
): Refit {
  const best = fits.reduce((a, b) => (b.sumOfSquares < a.sumOfSquares ? b : a));
  const widened = Math.max(1, best.misfit) ** 2;
  const alike = fits.filter((fit) => (fit.sumOfSquares - best.sumOfSquares) / widened < TOLD);
  const errors = fittedErrors(best, alike);
  const estimate = (i: number): Estimate => ({
    value: best.values[i]!,
    error: errors[i]!,
    from: errors[i]! < FROM_READINGS * best.unknowns[i]!.before && !isAtLimit(best, i) ? "readings" : "assumed",
  });
  const role = roles.reflector === undefined ? [roles.driven] : [roles.driven, roles.reflector];
  const parameters = unpackParameters(best.values);
  const f = plan.frequency_MHz;
  const planned_m = role.map((i) => plan.elements[i]!.height_m);
  const matrix = matrixAt(best.model, roles, planned_m, parameters)(f);
  const mutual = roles.reflector === undefined ? null : matrix[roles.driven]![roles.reflector]!;
  const noMutual: Estimate = { value: 1, error: null, from: "not-fitted" };

  const elements = role.map((i, e) => ({
    elementId: plan.elements[i]!.id,
    lengthFactor: estimate(3 * e),
    resistance_ohm: estimate(3 * e + 1),
    reactance_ohm: estimate(3 * e + 2),
  }));
  let effective = best.model.chart;
  planned_m.forEach((length, e) => {
    effective = effective.fix(length * parameters.lengthFactor[e]!);
  });
  const measured: SampleNumbers = {
    impedance_ohm: matrix.flatMap((row) => row.flatMap(({ re, im }) => [re, im])),
    fields: effective.sampleAt([f]).fields,
  };
  const figuresOf = (sample: SampleNumbers) => figures(request, plan, roles, sample);
  return {
    elements,
    mutualScale: roles.reflector === undefined ? noMutual : estimate(6),
    mutual_ohm: mutual && { value: mutual, error_ohm: (cx.abs(mutual) * errors[6]!) / best.values[6]! },
    mutualDirect_ohm: mutual && directFrom(plan, roles, readings, mutual),
    soil: { ground: best.soil.ground, id: best.soil.id, alike: alike.map(({ soil }) => soil.id) },
    alike: alikePairs(best),
    misfit: best.misfit,
    perReading: readings.map(({ id, state }, r) => ({ id, state, rms_ohm: best.rms_ohm[r]! })),
    asMeasured: {
      date: request.date,
      elements: elements.map(({ elementId, lengthFactor, resistance_ohm, reactance_ohm }) => ({
        elementId,
        lengthFactor: lengthFactor.value,
        series_ohm: { re: resistance_ohm.value, im: reactance_ohm.value },
      })),
      ...(best.soil.id !== "planned" && { ground: best.soil.ground }),
      ...(roles.reflector !== undefined && { mutualScale: parameters.mutualScale }),
    },
    planned: figuresOf(planned),
    measured: figuresOf(measured),
    nextCut: role.map((_, e) => nextCut({ plan, roles, readings, fit: best, planned }, e)),
    error_ohm: Math.max(...fits.map((fit) => fit.error_ohm)),
  };
}

function figures(request: RefitRequest, plan: Plan, roles: BenchRoles, sample: SampleNumbers): RefitFigures {
  const look = { pathElevation_deg: request.elevation_deg, rearSector_deg: 0 };
  const directions = { elevations_deg: [request.elevation_deg], azimuths_deg: [0, 180] };
  const read = figuresReader(look, directions)(plan.elements, sample);
  const ratio = roles.reflector === undefined ? undefined : read.baseCurrents[roles.reflector]!.current;
  return {
    impedance_ohm: read.feeds[0]!.impedance_ohm,
    swr: read.feeds[0]!.swr50,
    forward_dBi: read.forward_dBi,
    frontToBack_dB: read.frontToBack_dB,
    currentRatio: ratio ? { magnitude: cx.abs(ratio), phase_deg: (cx.arg(ratio) * 180) / Math.PI } : null,
  };
}

/** Z₁₂ straight from the newest reading of each state, where all three reach the plan's frequency. */
function directFrom(
  plan: Plan,
  roles: BenchRoles,
  readings: readonly RefitReading[],
  expected_ohm: Complex,
): Complex | null {
  // More than one other connected base, and the three readings no longer make the formula.
  if (plan.elements.some(({ base }, i) => i !== roles.driven && i !== roles.reflector && base.kind !== "open"))
    return null;
  const { base } = plan.elements[roles.reflector!]!;
  if (base.kind === "open" || base.kind === "fed") return null;
  const newest = (state: BenchState) => {
    const reading = readings.findLast((one) => one.state === state);
    return reading && readingAt(reading.points, plan.frequency_MHz);
  };
  const [z11, z22, z1] = [newest("driven-alone"), newest("reflector-alone"), newest("reflector-joined")];
  if (!z11 || !z22 || !z1) return null;
  const load = base.kind === "loaded" ? cx.of(base.resistance_ohm, base.reactance_ohm) : cx.zero;
  return directMutual(z11, cx.add(z22, load), z1, expected_ohm);
}

/** Whether a value lies at the end of what the search goes through: no reading put it there. */
function isAtLimit({ values, unknowns }: SoilFit, i: number): boolean {
  const { least, most, before } = unknowns[i]!;
  const near = 1e-6 * before;
  return values[i]! - least < near || most - values[i]! < near;
}

function alikePairs({ covariance: c, unknowns }: SoilFit): Alike[] {
  const P = unknowns.length;
  const out: Alike[] = [];
  for (let i = 0; i < P; i++)
    for (let j = i + 1; j < P; j++) {
      const correlation = c[i * P + j]! / Math.sqrt(c[i * P + i]! * c[j * P + j]!);
      if (Math.abs(correlation) > ALIKE) out.push({ first: unknowns[i]!.name, second: unknowns[j]!.name, correlation });
    }
  return out;
}
