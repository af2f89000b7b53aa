import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";
import { drivenOf, reflectorOf, wavelength_m } from "../../../engine/index.ts";
import { oncePer } from "../../oncePer.ts";
import type { Units } from "../../store/useSettings.ts";
import { formatQuantity } from "../../ui/quantity/formatQuantity.ts";
import { elementName } from "./elementName.ts";
import { headingOf } from "./heading.ts";
import type { Box_px, LabelWish, Side } from "./placeLabels.ts";
import { boxAround, boxesAlong } from "./placeLabels.ts";
import type { PlanFrame, Point_px } from "./planFrame.ts";
import { onRing, toSheet } from "./planFrame.ts";

/** How far the dimension line runs beside the beam line. */
const dimensionOff_px = 24;
export const dotRadius_px = 7;

/** "8.40 m, 0.199 λ" */
export function spacingText(apart_m: number, frequency_MHz: number, units: Units): string {
  return `${formatQuantity(apart_m, "length_m", units)}, ${(apart_m / wavelength_m(frequency_MHz)).toFixed(3)} λ`;
}

export interface DimensionLine {
  readonly from: Point_px;
  readonly to: Point_px;
  /** Where the two points it measures lie. */
  readonly feet: readonly [Point_px, Point_px];
}

/** A line beside the one from driven to reflector, on its right hand seen along the beam. */
export function dimensionLine(
  frame: PlanFrame,
  heading_deg: number,
  driven: ElementPlan,
  reflector: ElementPlan,
): DimensionLine {
  const a = toSheet(frame, heading_deg, driven.forward_m, driven.left_m);
  const b = toSheet(frame, heading_deg, reflector.forward_m, reflector.left_m);
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  // Ahead is from reflector to driven; with y running down, (−y, x) is the right hand of (x, y).
  const across = { x: (-(a.y - b.y) / length) * dimensionOff_px, y: ((a.x - b.x) / length) * dimensionOff_px };
  return {
    from: { x: a.x + across.x, y: a.y + across.y },
    to: { x: b.x + across.x, y: b.y + across.y },
    feet: [a, b],
  };
}

/** The side of a point that lies in a true bearing, north being up. */
export function sideToward(bearing_deg: number): Side {
  const eighth = Math.round((((bearing_deg % 360) + 360) % 360) / 45) % 8;
  return (["above", "above-right", "right", "below-right", "below", "below-left", "left", "above-left"] as const)[
    eighth
  ]!;
}

export interface PlanLabelling {
  readonly wishes: readonly LabelWish[];
  readonly obstacles: readonly Box_px[];
}

/**
 * Everything that is written on the view from above, and everything it must keep clear of.
 * `short`: where there is little room, the spacing goes without its wavelengths, which the view from the side has too.
 */
export function planLabels(
  frame: PlanFrame,
  plan: SavedPlan,
  units: Units,
  fixed: readonly Box_px[],
  short: boolean,
  ghost?: ElementPlan,
): PlanLabelling {
  const heading = headingOf(plan);
  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  const at = (element: ElementPlan) => toSheet(frame, heading, element.forward_m, element.left_m);
  /** The leftmost edge of the radial field, seen along the beam. */
  const rimOf = (element: ElementPlan) =>
    toSheet(frame, heading, element.forward_m, element.left_m + element.radials.length_m);
  const radialText = ({ radials }: ElementPlan) =>
    `${radials.count} × ${formatQuantity(radials.length_m, "length_m", units)}`;

  const end = onRing(frame, heading);
  const obstacles = [...fixed, boxAround(end, 12), ...ringBoxes(frame)];
  for (const element of plan.elements) obstacles.push(boxAround(at(element), dotRadius_px + 3));
  if (ghost) obstacles.push(boxAround(at(ghost), dotRadius_px + 3));
  if (driven) obstacles.push(...boxesAlong(at(driven), end));

  const wishes: LabelWish[] = [
    {
      id: "heading",
      text: formatQuantity(heading, "bearing_deg", units),
      // Outside the ring, where it curves away from the text.
      anchor: onRing(frame, heading, 10),
      gap_px: 11,
      prefer: [heading + 90, heading - 90, heading + 45, heading - 45].map(sideToward),
    },
  ];
  if (driven && reflector) {
    const line = dimensionLine(frame, heading, driven, reflector);
    const apart_m = Math.hypot(driven.forward_m - reflector.forward_m, driven.left_m - reflector.left_m);
    obstacles.push(...boxesAlong(line.from, line.to), ...boxesAlong(at(driven), at(reflector)));
    wishes.push({
      id: "spacing",
      text: short ? formatQuantity(apart_m, "length_m", units) : spacingText(apart_m, plan.frequency_MHz, units),
      anchor: { x: (line.from.x + line.to.x) / 2, y: (line.from.y + line.to.y) / 2 },
      gap_px: 8,
      prefer: [heading + 90, heading + 45, heading + 135].map(sideToward),
    });
  }
  const alike = haveSameRadials(plan.elements);
  for (const element of plan.elements)
    wishes.push({
      id: `element ${element.id}`,
      text: elementName(plan, element) + (alike ? "" : `, ${radialText(element)}`),
      anchor: at(element),
      gap_px: dotRadius_px + 6,
      prefer: [heading - 90, heading - 45, heading - 135].map(sideToward),
    });
  if (ghost)
    wishes.push({
      id: "ghost",
      text: "add reflector",
      anchor: at(ghost),
      gap_px: dotRadius_px + 6,
      prefer: [heading + 180, heading + 135, heading + 90].map(sideToward),
    });
  // One label speaks for all where all have the same radials.
  const first = plan.elements[0];
  if (alike && first && first.radials.count > 0)
    wishes.push({
      id: "radials",
      text: (plan.elements.length > 1 ? "each " : "") + radialText(first),
      anchor: rimOf(first),
      gap_px: 4,
      prefer: [heading - 90, heading - 45, heading - 135, heading + 90].map(sideToward),
    });
  return { wishes, obstacles };
}

/** The compass ring, as a row of small obstacles. */
const ringBoxes = oncePer((frame: PlanFrame) =>
  Array.from({ length: 90 }, (_, i) => boxAround(onRing(frame, 4 * i), 2.5)),
);

function haveSameRadials(elements: readonly ElementPlan[]): boolean {
  return elements.every(
    ({ radials }) => radials.count === elements[0]!.radials.count && radials.length_m === elements[0]!.radials.length_m,
  );
}
