import type { Plan } from "../../contract.ts";

/** Whether a plan is answered by the soil preview. */
export function isPreview({ ground, soilModel }: Plan): boolean {
  return ground.kind === "soil" && soilModel === "screen";
}
