import type { WireProblem } from "../contract.ts";

/** Is this a soil preview with radials to correct for? */
export function isScreened(problem: WireProblem): boolean {
  return problem.ground.kind === "soil" && problem.soilModel !== "full-wave" && (problem.screens?.length ?? 0) > 0;
}
