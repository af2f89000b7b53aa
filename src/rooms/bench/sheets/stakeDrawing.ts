import { layRadials, type Plan, type SavedPlan } from "../../../../engine/index.ts";
import { headingOf } from "../../yard/heading.ts";
import { fitPlanFrame, type PlanFrame, type Point_px, toSheet } from "../../yard/planFrame.ts";
import { radialLines } from "../../yard/radialLines.ts";

export interface StakeDrawing {
  readonly frame: PlanFrame;
  readonly radials: string;
  /** One circle a mast could fall into, height and a metre, as radius in px. */
  readonly bases: readonly {
    readonly elementId: string;
    readonly at: Point_px;
    readonly fall_px: number;
    readonly isFed: boolean;
  }[];
  readonly beam: { readonly from: Point_px; readonly to: Point_px };
  place(forward_m: number, left_m: number): Point_px;
}

/** The ground from above, true north up, drawn to one scale with the circles that masts could fall into. */
export function stakeDrawing(plan: SavedPlan, width_px: number, height_px: number): StakeDrawing {
  const heading = headingOf(plan);
  const frame = fitFalls(plan, width_px, height_px);
  const place = (forward_m: number, left_m: number) => toSheet(frame, heading, forward_m, left_m);
  const bases = plan.elements.map((one) => ({
    elementId: one.id,
    at: place(one.forward_m, one.left_m),
    fall_px: (one.height_m + 1) * frame.pxPerM,
    isFed: one.base.kind === "fed",
  }));
  const driven = plan.elements.find((one) => one.base.kind === "fed") ?? plan.elements[0]!;
  const ahead_m = 0.8 * driven.height_m;
  return {
    frame,
    radials: radialLines(
      frame,
      heading,
      layRadials(
        plan,
        plan.elements.map(() => 0),
      ),
    ),
    bases,
    beam: { from: place(driven.forward_m, driven.left_m), to: place(driven.forward_m + ahead_m, driven.left_m) },
    place,
  };
}

/** As the Yard fits its view from above, but with the fall circles inside. */
function fitFalls(plan: Plan, width_px: number, height_px: number): PlanFrame {
  const reach = (one: Plan["elements"][number]) =>
    Math.max(one.height_m + 1, one.radials.count > 0 ? one.radials.length_m : 0);
  const wide: Plan = {
    ...plan,
    elements: plan.elements.map((one) => ({ ...one, radials: { ...one.radials, count: 1, length_m: reach(one) } })),
  };
  return fitPlanFrame(wide, width_px, height_px);
}
