import type { Plan } from "../contract.ts";
import type { Terminated } from "../solve/solveTerminated.ts";
import { footing } from "../wires/footing.ts";
import type { PlanReadout } from "./PlanReadout.ts";

/**
 * Magnitude of the current along every radial that is a wire, at the ends of its segments from hub to tip, relative to
 * the base current of the first fed element [1]; none where radials are a screen or stand on a ground plane.
 *
 * Wires are counted as `wiresFromPlan` lays them: each upright, then its radials from the hub outwards.
 */
export function radialCurrents(plan: Plan, solved: Terminated): NonNullable<PlanReadout["radialCurrents"]> {
  const { segments } = solved.states;
  const first = plan.elements.findIndex((element) => element.base.kind === "fed");
  const reference = magnitude(solved.amperes, first);
  const found = [];
  let wire = 0;
  for (const element of plan.elements) {
    wire++;
    const { count } = element.radials;
    if (footing(plan, element) !== "wires") continue;
    const from = segments.firstOfWire[wire]!;
    const at_m = [0];
    for (let s = from; s < segments.firstOfWire[wire + 1]!; s++) at_m.push(at_m.at(-1)! + segments.length[s]!);
    const relative = Array.from({ length: count }, (_, r) => {
      const start = segments.firstOfWire[wire + r]!;
      const end = segments.firstOfWire[wire + r + 1]!;
      const along = [magnitude(solved.currents, 2 * start) / reference];
      for (let s = start; s < end; s++) along.push(magnitude(solved.currents, 2 * s + 1) / reference);
      return along;
    });
    found.push({ elementId: element.id, at_m, relative });
    wire += count;
  }
  return found;
}

function magnitude(pairs: Float64Array, i: number): number {
  return Math.sqrt(pairs[2 * i]! ** 2 + pairs[2 * i + 1]! ** 2);
}
