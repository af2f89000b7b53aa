import type { Plan } from "../../contract.ts";
import type { ArraySample, Directions } from "./arraySample.ts";
import type { Figures } from "./Figures.ts";
import { figuresReader } from "./figuresReader.ts";
import type { TrialLook } from "./TrialLook.ts";

/**
 * What a plan comes to by a solve of its wires: equal to `readPlan` of it to rounding. For many samples make one
 * `figuresReader`.
 *
 * @param request what to look at, and the directions the sample was taken in (`directionsOf` the look, or more)
 * @throws RangeError when the sample has not as many ports as the plan has elements, or lacks a direction
 */
export function arrayFigures(
  plan: Plan,
  sample: ArraySample,
  request: { readonly look: TrialLook; readonly directions: Directions },
): Figures {
  return figuresReader(request.look, request.directions)(plan.elements, sample);
}
