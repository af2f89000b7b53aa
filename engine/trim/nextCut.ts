import type { Plan } from "../contract.ts";
import type { ArraySample } from "../sweep/trial/arraySample.ts";
import type { BenchRoles } from "./benchRoles.ts";
import type { SoilFit } from "./fitSoil.ts";
import { matrixOf } from "./matrixCurve.ts";
import type { Refit } from "./Refit.ts";
import { readingResonance } from "./readingAt.ts";
import { matrixAt, type RefitReading, unpackParameters } from "./refitModel.ts";

interface CutInput {
  readonly plan: Plan;
  readonly roles: BenchRoles;
  readonly readings: readonly RefitReading[];
  readonly fit: SoilFit;
  /** The plan as planned at its frequency. */
  readonly planned: ArraySample;
}

/** Two lengths nearer than this say nothing of a slope [m]. */
const SAME_CUT_M = 0.005;

/**
 * What to cut off one element, as it stood at the newest reading, so that its own reactance at the plan's frequency becomes
 * the planned one: X(k L) + X_s = X planned, by the fitted model. Below 0: to add. With it mm per kHz of its
 * resonance by the model, (dX/df)/(dX/dL), and by the user's own readings of it alone before and after a cut.
 *
 * The error is that of the reactance, from the fit's covariance, over dX/dL.
 *
 * @param e 0 the driven, 1 the reflector
 */
export function nextCut({ plan, roles, readings, fit, planned }: CutInput, e: number): Refit["nextCut"][number] {
  const index = e === 0 ? roles.driven : roles.reflector!;
  const f = plan.frequency_MHz;
  const now = readings.at(-1)!.cut_m;
  const reactance = (values: Float64Array, length_m: number, at_MHz = f) => {
    const cut = now.map((other, i) => (i === e ? length_m : other));
    return matrixAt(fit.model, roles, cut, unpackParameters(values))(at_MHz)[index]![index]!.im;
  };
  const target = matrixOf(planned)[index]![index]!.im;
  const length = now[e]!;
  const perMHz = (reactance(fit.values, length, f * 1.002) - reactance(fit.values, length, f * 0.998)) / (0.004 * f);
  const { from, to } = fit.model.lengths_m[e]!;
  const factor = unpackParameters(fit.values).lengthFactor[e]!;
  // Beyond the model's lengths its edge is carried straight on.
  const carried = (length_m: number): { readonly x: number; readonly slope: number } => {
    const h = 0.002 * length_m;
    const inside = Math.min(to / factor - h, Math.max(from / factor + h, length_m));
    const slope = (reactance(fit.values, inside + h) - reactance(fit.values, inside - h)) / (2 * h);
    return { x: reactance(fit.values, inside) + slope * (length_m - inside), slope };
  };
  // A few steps of Newton's: X is all but straight in length.
  let wanted = length;
  for (let n = 0; n < 6; n++) {
    const { x, slope } = carried(wanted);
    wanted -= (x - target) / slope;
  }

  const perMetre = carried(length).slope;
  // δX² = gᵀCg over the element's three unknowns and all others.
  const P = fit.values.length;
  const gradient = Array.from(fit.values, (_, i) => {
    const h = 0.01 * fit.unknowns[i]!.before;
    const [up, down] = [fit.values.slice(), fit.values.slice()];
    up[i]! += h;
    down[i]! -= h;
    return (reactance(up, length) - reactance(down, length)) / (2 * h);
  });
  let variance = 0;
  for (let i = 0; i < P; i++)
    for (let j = 0; j < P; j++) variance += gradient[i]! * fit.covariance[i * P + j]! * gradient[j]!;
  return {
    elementId: plan.elements[index]!.id,
    cut_mm: 1e3 * (length - wanted),
    error_mm: (1e3 * Math.max(1, fit.misfit) * Math.sqrt(variance)) / Math.abs(perMetre),
    mmPerKHz: perMHz / perMetre,
    ownMmPerKHz: ownSlope(readings, e),
  };
}

/** From two readings of the element alone with a cut between them: millimetres over the kilohertz its resonance moved. */
function ownSlope(readings: readonly RefitReading[], e: number): number | null {
  const state = e === 0 ? "driven-alone" : "reflector-alone";
  const found = readings.flatMap(({ state: own, cut_m, points }) => {
    const resonance = own === state ? readingResonance(points) : undefined;
    return resonance ? [{ length_m: cut_m[e]!, f_MHz: resonance.frequency_MHz }] : [];
  });
  const last = found.at(-1);
  const before = last && found.findLast((one) => Math.abs(one.length_m - last.length_m) > SAME_CUT_M);
  if (!last || !before || last.f_MHz === before.f_MHz) return null;
  return (before.length_m - last.length_m) / (last.f_MHz - before.f_MHz);
}
