import type { ElementPlan, Plan } from "../contract.ts";
import { radialDirections } from "./radialDirections.ts";

/** Radials that stop end this far from the line midway between two elements [m]. */
const STOP_SHORT_M = 0.05;
/** Ends on a bus nearer than this to each other share one joint [m]. */
const ONE_JOINT_M = 0.02;

type Point = readonly [number, number, number];

/** One straight wire of the ground system. */
export interface LaidWire {
  readonly kind: "radial" | "bus" | "bond";
  /** Index of the element a radial belongs to; of the first of the two that a bus or bond lies between. */
  readonly element: number;
  readonly from_m: Point;
  readonly to_m: Point;
}

/**
 * The radials of a plan as they are laid, hub first, element by element, then the wires that join fields: buses along the
 * lines midway between elements, and bonds from base to base along the row of elements.
 *
 * A radial that would pass the midline to another element ends there, or 5 cm before it, unless the fields overlap.
 *
 * @param hub_m height of each element's hub; undefined where its radials are no wires
 */
export function layRadials(plan: Plan, hub_m: readonly (number | undefined)[]): LaidWire[] {
  const { elements, fields = { radials: "overlap", bonded: false } } = plan;
  const laid: LaidWire[] = [];
  /** Places along each midline at which radials end: distance from its middle, by pair "i j". */
  const joints = new Map<string, number[]>();

  elements.forEach((element, i) => {
    const z = hub_m[i];
    if (z === undefined) return;
    for (const { angle, length_m } of wanted(element)) {
      const u = [Math.cos(angle), Math.sin(angle)] as const;
      let length = length_m;
      let meets: { readonly j: number; readonly along: number } | undefined;
      if (fields.radials !== "overlap")
        for (const [j, other] of elements.entries()) {
          if (i === j || hub_m[j] === undefined) continue;
          const { half_m, n, m } = midline(element, other);
          const towards = u[0] * n[0] + u[1] * n[1];
          if (towards <= 0) continue;
          const to = half_m / towards;
          const end = fields.radials === "stop" ? (half_m - STOP_SHORT_M) / towards : to;
          if (end >= length) continue;
          length = Math.max(end, 0.5 * to);
          meets = { j, along: to * (u[0] * m[0] + u[1] * m[1]) };
        }
      let end: Point = [element.forward_m + length * u[0], element.left_m + length * u[1], z];
      if (meets && fields.radials === "bus") {
        const [a, b] = [Math.min(i, meets.j), Math.max(i, meets.j)];
        const key = `${a} ${b}`;
        // Seen from the other element the line runs the other way.
        const along = i < meets.j ? meets.along : -meets.along;
        const known = joints.get(key) ?? [];
        const joint = known.find((place) => Math.abs(place - along) < ONE_JOINT_M) ?? along;
        if (!known.includes(joint)) joints.set(key, [...known, joint]);
        end = onMidline(elements[a]!, elements[b]!, joint, z);
      }
      laid.push({ kind: "radial", element: i, from_m: [element.forward_m, element.left_m, z], to_m: end });
    }
  });

  const row = elements
    .map((_, i) => i)
    .filter((i) => hub_m[i] !== undefined)
    .sort((i, j) => elements[i]!.forward_m - elements[j]!.forward_m || elements[i]!.left_m - elements[j]!.left_m);
  if (fields.bonded)
    row.slice(1).forEach((j, r) => {
      const [a, b] = [Math.min(row[r]!, j), Math.max(row[r]!, j)];
      const [from, to] = [a, b].map((e): Point => [elements[e]!.forward_m, elements[e]!.left_m, hub_m[e]!]);
      const bus = joints.get(`${a} ${b}`);
      if (!bus) {
        laid.push({ kind: "bond", element: a, from_m: from!, to_m: to! });
        return;
      }
      // The bond crosses the bus: they are joined there.
      const joint = bus.find((place) => Math.abs(place) < ONE_JOINT_M) ?? 0;
      if (!bus.includes(joint)) bus.push(joint);
      const middle = onMidline(elements[a]!, elements[b]!, joint, hub_m[a]!);
      laid.push({ kind: "bond", element: a, from_m: from!, to_m: middle });
      laid.push({ kind: "bond", element: a, from_m: to!, to_m: middle });
    });
  for (const [key, places] of joints) {
    const [a, b] = key.split(" ").map(Number) as [number, number];
    const sorted = places.toSorted((p, q) => p - q);
    sorted.slice(1).forEach((place, p) => {
      const at = (along: number) => onMidline(elements[a]!, elements[b]!, along, hub_m[a]!);
      laid.push({ kind: "bus", element: a, from_m: at(sorted[p]!), to_m: at(place) });
    });
  }
  return laid;
}

function wanted({ radials }: ElementPlan): { readonly angle: number; readonly length_m: number }[] {
  if (radials.each)
    return radials.each.map(({ direction_deg, length_m }) => ({ angle: (direction_deg * Math.PI) / 180, length_m }));
  return radialDirections(radials.count).map((angle) => ({ angle, length_m: radials.length_m }));
}

/** Half the distance of two bases, the unit vector from one to the other, and the one along the midline. */
function midline(one: ElementPlan, other: ElementPlan) {
  const x = other.forward_m - one.forward_m;
  const y = other.left_m - one.left_m;
  const d = Math.sqrt(x * x + y * y);
  const n = [x / d, y / d] as const;
  return { half_m: 0.5 * d, n, m: [-n[1], n[0]] as const };
}

function onMidline(one: ElementPlan, other: ElementPlan, along: number, z: number): Point {
  const { half_m, n, m } = midline(one, other);
  return [one.forward_m + half_m * n[0] + along * m[0], one.left_m + half_m * n[1] + along * m[1], z];
}
