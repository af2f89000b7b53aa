import {
  type AsMeasured,
  drivenOf,
  type ExpectedSheet,
  type Plan,
  reflectorOf,
  type SavedPlan,
} from "../../../../engine/index.ts";
import { benchOf } from "../useBenchEdit.ts";

/**
 * A plan that carries a correction, without it: the lengths that were cut, and no more in series with the bases than was
 * planned. Its soil stays the one that was found. A plan without a correction is itself.
 */
export function asCutPlan(plan: SavedPlan): SavedPlan {
  const { asMeasured } = benchOf(plan);
  if (!asMeasured) return plan;
  const elements = plan.elements.map((element): Plan["elements"][number] => {
    const found = asMeasured.elements.find((one) => one.elementId === element.id);
    if (!found) return element;
    const { baseSeries, ...rest } = element;
    const r = (baseSeries?.resistance_ohm ?? 0) - found.series_ohm.re;
    const x = (baseSeries?.reactance_ohm ?? 0) - found.series_ohm.im;
    // What is left of a sum and its difference is rounding.
    const isNothing = Math.abs(r) < 1e-9 && Math.abs(x) < 1e-9;
    return {
      ...rest,
      height_m: Number((element.height_m / found.lengthFactor).toPrecision(12)),
      ...(isNothing ? {} : { baseSeries: { resistance_ohm: r, reactance_ohm: x } }),
    };
  });
  return { ...plan, elements };
}

/** A length of an upright as it is cut, from the length the plan says it acts. */
export function cutLength_m(asMeasured: AsMeasured | undefined, elementId: string, acts_m: number): number {
  return acts_m / (asMeasured?.elements.find((one) => one.elementId === elementId)?.lengthFactor ?? 1);
}

/** The steps of a plan that carries a correction, with the lengths that are cut instead of those the wires act. */
export function asCutSteps(sheet: ExpectedSheet, plan: SavedPlan): ExpectedSheet {
  const { asMeasured } = benchOf(plan);
  const driven = drivenOf(plan);
  if (!asMeasured || !driven) return sheet;
  const reflector = reflectorOf(plan);
  const cut = (id: string, acts: number) => cutLength_m(asMeasured, id, acts);
  return {
    ...sheet,
    steps: sheet.steps.map((step) => {
      const { driven_m, reflector_m } = step.lengths_m;
      return {
        ...step,
        lengths_m: {
          driven_m: cut(driven.id, driven_m),
          ...(reflector && reflector_m !== undefined ? { reflector_m: cut(reflector.id, reflector_m) } : {}),
        },
      };
    }),
  };
}
