import type { Plan } from "../../contract.ts";
import { withRadials } from "./withRadials.ts";

/** Ways in which radials on the ground may come to lie, as heights of their axes [m]. */
export const layingHeights_m = [0, 0.02, -0.05] as const;
/** From this many radials on, how they lie hardly matters. */
export const FEW_RADIALS = 8;

/**
 * A plan as it would be if its radials lay on bare earth, held up a little by grass, or slit in: for few radials that
 * outweighs most else, and nobody knows it exactly. Empty where it does not matter: eight or more, raised ones, or other
 * ground than soil.
 */
export function layings<P extends Plan>(plan: P): { readonly height_m: number; readonly plan: P }[] {
  const few = plan.elements.some(({ radials }) => radials.count > 0 && radials.count < FEW_RADIALS);
  const onGround = plan.elements.every(({ radials }) => radials.height_m >= -0.3 && radials.height_m <= 0.05);
  if (plan.ground.kind !== "soil" || !few || !onGround) return [];
  return layingHeights_m.map((height_m) => ({ height_m, plan: withRadials(plan, { height_m }) }));
}
