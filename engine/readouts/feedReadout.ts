import type { Complex, Plan, PlanSolution } from "../contract.ts";
import type { Terminated } from "../solve/solveTerminated.ts";
import { swr } from "./swr.ts";

/** Impedance and SWR (50 ohm) of every fed element, and all base currents relative to the first fed one's. */
export function feedReadout(plan: Plan, solved: Terminated): Pick<PlanSolution, "feeds" | "baseCurrents"> {
  const { volts, amperes } = solved;
  const at = (a: Float64Array, i: number): Complex => ({ re: a[2 * i]!, im: a[2 * i + 1]! });
  const over = (a: Complex, b: Complex): Complex => {
    const d = b.re * b.re + b.im * b.im;
    return { re: (a.re * b.re + a.im * b.im) / d, im: (a.im * b.re - a.re * b.im) / d };
  };
  const first = plan.elements.findIndex((e) => e.base.kind === "fed");
  const reference = at(amperes, first);
  return {
    feeds: plan.elements.flatMap((element, i) => {
      if (element.base.kind !== "fed") return [];
      const impedance_ohm = over(at(volts, i), at(amperes, i));
      return [{ elementId: element.id, impedance_ohm, swr50: swr(impedance_ohm.re, impedance_ohm.im, 50) }];
    }),
    baseCurrents: plan.elements.map((element, i) => ({
      elementId: element.id,
      current: element.base.kind === "open" ? { re: 0, im: 0 } : over(at(amperes, i), reference),
    })),
  };
}
