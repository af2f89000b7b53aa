import type { Plan } from "../../engine/index.ts";

/** The fields the engine needs, without pins and notes: small enough to send each frame, and a key for what was solved. */
export function solverPlan({ format, version, title, frequency_MHz, ground, soilModel, elements }: Plan): Plan {
  return { format, version, title, frequency_MHz, ground, soilModel, elements };
}
