import type { ElementBase, Plan } from "../../contract.ts";
import { drivenOf } from "../../plan/edits/drivenOf.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { withElement } from "../../plan/edits/withElement.ts";
import { withSpacing } from "../../plan/edits/withSpacing.ts";
import type { BestDesign } from "./BestPicture.ts";

type Lengths = Pick<BestDesign, "driven_m" | "reflector_m" | "spacing_m" | "coil_ohm">;

/**
 * The plan with a design's lengths, spacing and coil. A plan without a reflector comes back as it was.
 * @param coilQ reactance over resistance of the coil; absent: without loss
 */
export function withBestDesign<P extends Plan>(plan: P, design: Lengths, coilQ?: number): P {
  const [driven, reflector] = [drivenOf(plan), reflectorOf(plan)];
  if (!driven || !reflector) return plan;
  const cut = withElement(plan, driven.id, (element) => ({ ...element, height_m: design.driven_m }));
  const behind = withElement(cut, reflector.id, (element) => ({
    ...element,
    height_m: design.reflector_m,
    base: coilBase(design.coil_ohm, coilQ),
  }));
  return withSpacing(behind, design.spacing_m);
}

/** A base with a coil in it, or joined where its reactance is 0. */
export function coilBase(coil_ohm: number, coilQ?: number): ElementBase {
  if (coil_ohm === 0) return { kind: "joined" };
  return { kind: "loaded", resistance_ohm: coilQ === undefined ? 0 : coil_ohm / coilQ, reactance_ohm: coil_ohm };
}
