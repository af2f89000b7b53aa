import type { WireProblem } from "../contract.ts";

/**
 * Does a wire end at z = 0 join a ground plane that carries its current on? So it is over perfect ground and in the
 * soil preview. In the full-wave model soil is soil: a wire needs radials to stand on.
 */
export function imagesCurrents(problem: Pick<WireProblem, "ground" | "soilModel">): boolean {
  return problem.ground.kind === "perfect" || (problem.ground.kind === "soil" && problem.soilModel !== "full-wave");
}
