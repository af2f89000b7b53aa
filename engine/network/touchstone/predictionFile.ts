import type { Result } from "../../result.ts";
import type { TouchstonePoint } from "./Touchstone.ts";
import { writeTouchstone } from "./writeTouchstone.ts";

/**
 * A calculated sweep as a one-port file (MHz, S, RI, 50 ohm) that an analyser can lay under its own. Its first comment says
 * that it is a prediction.
 *
 * @param what the plan's title and the state the bases are in
 * @param date of the prediction, as it is to stand there
 */
export function predictionFile(points: readonly TouchstonePoint[], what: string, date: string): Result<string> {
  return writeTouchstone({
    points,
    options: { unit: "MHz", parameter: "S", format: "RI", reference_ohm: 50 },
    comments: [`Prediction, not a measurement. Calculated ${date}.`, what],
  });
}
