import type { Complex, Plan } from "../../contract.ts";
import { invert } from "../../linalg/invert.ts";
import { checkPlan } from "../../plan/checkPlan.ts";
import { ok, type Result } from "../../result.ts";
import { portImpedances } from "../../solve/portImpedances.ts";
import { wiresFromPlan } from "../../wires/wiresFromPlan.ts";
import { cx } from "../cx.ts";

export interface FedImpedances {
  /** The fed elements in plan order; rows and columns of the matrix. */
  readonly elementIds: readonly string[];
  readonly impedance_ohm: readonly (readonly Complex[])[];
}

/**
 * Open-circuit impedance matrix of a plan's fed elements at a frequency, the others standing as the plan says: open ones
 * out of the picture, joined and loaded ones taken in, Z_ff − Z_fu (Z_uu + Z_load)⁻¹ Z_uf. What harness and drive points
 * need of an antenna. Wires are cut as at the plan's own frequency, so that a band makes a smooth curve.
 *
 * Takes one solution of the wires per frequency. Problems: those of the plan, and of `portImpedances`.
 */
export function fedImpedances(candidate: Plan, frequency_MHz = candidate.frequency_MHz): Result<FedImpedances> {
  const plan = checkPlan({ ...candidate, frequency_MHz });
  if (!plan.ok) return plan;
  const laid = wiresFromPlan(plan.value, candidate.frequency_MHz);
  if (!laid.ok) return laid;
  const open = portImpedances(laid.value.problem);
  if (!open.ok) return open;
  const z = open.value;
  const fed: number[] = [];
  const unfed: number[] = [];
  const loads: Complex[] = [];
  for (const [i, { base }] of plan.value.elements.entries()) {
    if (base.kind === "fed") fed.push(i);
    else if (base.kind !== "open") {
      unfed.push(i);
      loads.push(base.kind === "loaded" ? cx.of(base.resistance_ohm, base.reactance_ohm) : cx.zero);
    }
  }
  const n = unfed.length;
  const inner = new Float64Array(2 * n * n);
  for (const [i, p] of unfed.entries())
    for (const [j, q] of unfed.entries()) {
      const load = i === j ? loads[i]! : cx.zero;
      inner[2 * (i * n + j)] = z[p]![q]!.re + load.re;
      inner[2 * (i * n + j) + 1] = z[p]![q]!.im + load.im;
    }
  const y = invert(inner, n);
  const taken = (f: number, g: number): Complex => {
    let sum: Complex = z[f]![g]!;
    for (const [i, p] of unfed.entries())
      for (const [j, q] of unfed.entries()) {
        const between = { re: y[2 * (i * n + j)]!, im: y[2 * (i * n + j) + 1]! };
        sum = cx.sub(sum, cx.mul(cx.mul(z[f]![p]!, between), z[q]![g]!));
      }
    return sum;
  };
  return ok({
    elementIds: fed.map((i) => plan.value.elements[i]!.id),
    impedance_ohm: fed.map((f) => fed.map((g) => taken(f, g))),
  });
}
