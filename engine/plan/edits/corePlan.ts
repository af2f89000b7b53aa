import type { Plan } from "../../contract.ts";

/** Only what the solver needs: no site, band, pins, remark or fields unknown here. */
export function corePlan(plan: Plan): Plan {
  const { format, version, title, frequency_MHz, ground, soilModel, elements, fields } = plan;
  return { format, version, title, frequency_MHz, ground, soilModel, elements, ...(fields && { fields }) };
}
