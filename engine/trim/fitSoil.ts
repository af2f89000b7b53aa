import type { Plan } from "../contract.ts";
import type { BenchRoles } from "./benchRoles.ts";
import { leastSquares } from "./fit/leastSquares.ts";
import {
  misfits,
  pointError_ohm,
  type RefitChart,
  type RefitReading,
  type RefitUnknown,
  refitUnknowns,
  unpackParameters,
} from "./refitModel.ts";
import type { SoilAround } from "./soilsAround.ts";

/** The best fit in one soil. */
export interface SoilFit {
  readonly soil: SoilAround;
  readonly model: RefitChart;
  readonly unknowns: readonly RefitUnknown[];
  readonly values: Float64Array;
  /** Row-major, of the values. */
  readonly covariance: Float64Array;
  /** Of the readings and of what was held likely beforehand, in standard errors. */
  readonly sumOfSquares: number;
  /** Root mean square of the readings' misfits in their standard errors. */
  readonly misfit: number;
  readonly rms_ohm: readonly number[];
  readonly error_ohm: number;
}

/** Fits the unknowns to readings in one soil. @param error_ohm what the model's interpolation may be off by */
export function fitSoil(
  soil: SoilAround,
  model: RefitChart,
  error_ohm: number,
  plan: Plan,
  roles: BenchRoles,
  readings: readonly RefitReading[],
): SoilFit {
  const unknowns = refitUnknowns(roles.reflector === undefined ? 1 : 2);
  const errors = readings.flatMap(({ points }) =>
    points.flatMap((p) => {
      const error = pointError_ohm(p.resistance_ohm, p.reactance_ohm, error_ohm);
      return [error, error];
    }),
  );
  const off = (values: Float64Array) => misfits(model, plan, roles, readings, unpackParameters(values));
  const inErrors = (values: Float64Array) =>
    off(values)
      .flat()
      .map((v, n) => v / errors[n]!);
  const { parameters, covariance, sumOfSquares } = leastSquares({
    residuals: (values) =>
      Float64Array.from([...inErrors(values), ...unknowns.map((u, i) => (values[i]! - u.start) / u.before)]),
    start: unknowns.map((u) => u.start),
    scale: unknowns.map((u) => u.before),
    least: unknowns.map((u) => u.least),
    most: unknowns.map((u) => u.most),
  });
  const own = inErrors(parameters);
  return {
    soil,
    model,
    unknowns,
    values: parameters,
    covariance,
    sumOfSquares,
    misfit: Math.sqrt(own.reduce((sum, v) => sum + v * v, 0) / own.length),
    rms_ohm: off(parameters).map((each) => Math.sqrt(each.reduce((sum, v) => sum + v * v, 0) / each.length)),
    error_ohm,
  };
}
