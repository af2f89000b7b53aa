import type { Ground, PortInput, WireProblem } from "../../engine/index.ts";
import type { ReferenceElement } from "./ReferenceCase.ts";
import { ONE_VOLT, SHORT, uprights } from "./uprights.ts";

function termination(e: ReferenceElement): PortInput["termination"] {
  const pair = ([re, im]: readonly [number, number]) => ({ re, im });
  switch (e.base) {
    case "driven":
      return ONE_VOLT;
    case "short":
      return SHORT;
    case "open":
      return { kind: "open" };
    case "load":
      return { kind: "load", impedance_ohm: pair(e.load_ohm!) };
    case "current source":
      return { kind: "current", amperes: pair(e.base_current!) };
    default:
      throw new RangeError(`referenceProblem: base "${e.base}"`);
  }
}

/** A reference case as a problem for the engine, at its own choice of segments. */
export function referenceProblem(
  frequency_Hz: number,
  ground: Ground,
  elements: readonly ReferenceElement[],
): WireProblem {
  const halves = ground.kind === "free-space" ? 2 : 1;
  return uprights(
    frequency_Hz,
    ground,
    elements.map((e) => ({
      length_m: halves * e.length_m,
      radius_m: e.radius_m,
      x_m: e.x_m,
      y_m: e.y_m,
      termination: termination(e),
      ...(e.conductivity_S_per_m != null && { conductivity_SPerM: e.conductivity_S_per_m }),
    })),
  );
}
