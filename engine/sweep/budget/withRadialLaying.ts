import type { Plan } from "../../contract.ts";
import { withRadials } from "../../plan/edits/withRadials.ts";
import type { RadialLaying } from "./RadialsPicture.ts";

/**
 * The plan with its radials laid so: number, length and height under each element; what they are made of stays.
 * @throws RangeError when it names an element the plan has not
 */
export function withRadialLaying<P extends Plan>(
  plan: P,
  { height_m, fields }: Pick<RadialLaying, "height_m" | "fields">,
): P {
  return fields.reduce(
    (laid, { elementId, count, length_m }) => withRadials(laid, { count, length_m, height_m, each: null }, elementId),
    plan,
  );
}
