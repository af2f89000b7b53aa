import type { PlanCable } from "../../plan/SavedPlan.ts";
import { failed, type Result } from "../../result.ts";
import type { Line } from "./Line.ts";
import { lineTypes } from "./lineTypes.ts";
import { makeLine } from "./makeLine.ts";

/**
 * The cable a plan names, fit to be calculated with. Problems: those of `makeLine`; "unknown-cable" for an id the table
 * does not hold.
 */
export function lineOfCable(cable: PlanCable, where = "feedline.cable"): Result<Line> {
  if (cable.kind === "own") {
    const { impedance_ohm, velocityFactor, loss } = cable;
    return makeLine({ id: "own", name: `own cable, ${impedance_ohm} ohm`, impedance_ohm, velocityFactor, loss }, where);
  }
  const listed = lineTypes.find((type) => type.id === cable.id);
  if (listed) return makeLine(listed, where);
  const message = `The cable is ${JSON.stringify(cable.id)}; the table has no cable of that id.`;
  return failed({ code: "unknown-cable", where: `${where}.id`, message });
}
