import type { WireProblem } from "../contract.ts";
import { type HalfSpace, halfSpaceOf } from "../kernel/halfSpace/HalfSpace.ts";
import { imagesCurrents } from "./imagesCurrents.ts";

/** The soil that wires may lie in; undefined where the ground is none, or images their currents. */
export function soilAround(problem: Pick<WireProblem, "ground" | "soilModel" | "frequency_Hz">): HalfSpace | undefined {
  const { ground, frequency_Hz } = problem;
  if (ground.kind !== "soil" || imagesCurrents(problem)) return undefined;
  return halfSpaceOf(frequency_Hz, ground.relativePermittivity, ground.conductivity_SPerM);
}
