import type { Plan } from "../../contract.ts";
import { footing } from "../../wires/footing.ts";
import { layRadials } from "../../wires/layRadials.ts";
import { radialHeights } from "../../wires/radialHeights.ts";
import { isPreview } from "./isPreview.ts";
import { pairAt } from "./pairAt.ts";

/** Spacings looked at for a change; ones that come back within a step go unseen. */
const STEPS = 200;
/** A change is found to this part of the range. */
const EXACT = 1e-7;
/** Ends of radials that have just parted have to be this far apart before they can be solved [m]. */
const APART_M = 0.02;
/** With more, each is of little weight, and the last alone counts. */
const MOST = 6;

/**
 * Spacings [m] at which the solve of a pair jumps or bends, each as the last one before and the first after: where radials
 * that are wires begin to cross another element's, and the later ones lie higher; where another radial meets the line
 * midway and ends there; in the preview, where the circles of radials part.
 */
export function spacingBreaks(plan: Plan, from_m: number, to_m: number): readonly (readonly [number, number])[] {
  if (plan.elements.every((element) => footing(plan, element) === "ground plane")) return [];
  const shape = (spacing_m: number) => shapeOf(pairAt(plan, { spacing_m }));
  const breaks: (readonly [number, number])[] = [];
  let low = from_m;
  let before = shape(low);
  for (let i = 1; i <= STEPS; i++) {
    const high = from_m + ((to_m - from_m) * i) / STEPS;
    const after = shape(high);
    if (after !== before) breaks.push(narrow(shape, low, high, (to_m - from_m) * EXACT));
    low = high;
    before = after;
  }
  return breaks.length > MOST ? breaks.slice(-1) : breaks;
}

/**
 * What of the radials' layout changes by steps: at which heights they lie, how many are cut short, how many wires there are;
 * in the preview, which circles overlap.
 */
function shapeOf(plan: Plan): string {
  if (isPreview(plan)) return overlaps(plan);
  const hub_m = radialHeights(plan).height_m.map((height, i) =>
    footing(plan, plan.elements[i]!) === "wires" ? height : undefined,
  );
  if (plan.fields === undefined || plan.fields.radials === "overlap") return hub_m.join();
  const laid = layRadials(plan, hub_m);
  const lengths = laid
    .filter((wire) => wire.kind === "radial")
    .map(({ from_m, to_m }) => Math.hypot(to_m[0] - from_m[0], to_m[1] - from_m[1]));
  const wanted = plan.elements.flatMap(({ radials: { each, count, length_m } }, i) =>
    hub_m[i] === undefined ? [] : (each?.map((one) => one.length_m) ?? new Array<number>(count).fill(length_m)),
  );
  const cut = lengths.filter((length, i) => length < wanted[i]! - 1e-9).length;
  return [...hub_m, cut, laid.length].join();
}

function overlaps({ elements }: Plan): string {
  return elements
    .flatMap((one, i) =>
      elements.slice(0, i).map((other) => {
        const apart = Math.hypot(one.forward_m - other.forward_m, one.left_m - other.left_m);
        return apart < one.radials.length_m + other.radials.length_m;
      }),
    )
    .join();
}

function narrow(shape: (spacing_m: number) => string, low: number, high: number, exact: number): [number, number] {
  const before = shape(low);
  let [below, above] = [low, high];
  while (above - below > exact) {
    const middle = (below + above) / 2;
    if (shape(middle) === before) below = middle;
    else above = middle;
  }
  return [below, above + APART_M];
}
