import type { Plan } from "../contract.ts";
import type { Terminated } from "../solve/solveTerminated.ts";
import type { PlanWires } from "../wires/wiresFromPlan.ts";
import type { PlanReadout } from "./PlanReadout.ts";

/**
 * Magnitude of the current along every radial that is a wire, and along what joins radials, at the ends of segments,
 * relative to the base current of the first fed element [1]; none where radials are a screen or stand on a ground plane.
 */
export function radialCurrents(
  plan: Plan,
  { laid, firstLaid }: PlanWires,
  solved: Terminated,
): NonNullable<PlanReadout["radialCurrents"]> {
  const { segments } = solved.states;
  const first = plan.elements.findIndex((element) => element.base.kind === "fed");
  const reference = magnitude(solved.amperes, first);
  return laid.map(({ kind, element, from_m, to_m }, i) => {
    const start = segments.firstOfWire[firstLaid + i]!;
    const end = segments.firstOfWire[firstLaid + i + 1]!;
    const at_m = [0];
    const relative = [magnitude(solved.currents, 2 * start) / reference];
    for (let s = start; s < end; s++) {
      at_m.push(at_m.at(-1)! + segments.length[s]!);
      relative.push(magnitude(solved.currents, 2 * s + 1) / reference);
    }
    const { id } = plan.elements[element]!;
    return { kind, elementId: id, from_m: [from_m[0], from_m[1]], to_m: [to_m[0], to_m[1]], at_m, relative };
  });
}

function magnitude(pairs: Float64Array, i: number): number {
  return Math.sqrt(pairs[2 * i]! ** 2 + pairs[2 * i + 1]! ** 2);
}
