import type { Plan } from "../contract.ts";
import type { AsMeasured } from "../plan/PlanBench.ts";

/**
 * The plan as readings say it is: every upright as long as it acts, what its ground adds in series with its base, and the
 * soil that fits. A plan of its own that every room can show. Elements that were not measured stay as they are; what the
 * mutual impedance is off by cannot be carried and is left out.
 */
export function asMeasuredPlan<P extends Plan>(plan: P, { elements, ground }: AsMeasured): P {
  return {
    ...plan,
    ...(ground && { ground }),
    elements: plan.elements.map((element) => {
      const found = elements.find(({ elementId }) => elementId === element.id);
      if (!found) return element;
      const { resistance_ohm = 0, reactance_ohm = 0 } = element.baseSeries ?? {};
      return {
        ...element,
        height_m: element.height_m * found.lengthFactor,
        baseSeries: {
          resistance_ohm: resistance_ohm + found.series_ohm.re,
          reactance_ohm: reactance_ohm + found.series_ohm.im,
        },
      };
    }),
  };
}
