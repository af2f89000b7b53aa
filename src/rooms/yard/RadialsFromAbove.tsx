import type { ElementPlan } from "../../../engine/index.ts";
import { currentLines, mostCurrent, type RadialCurrents } from "./currentLines.ts";
import type { PlanFrame } from "./planFrame.ts";
import { radialLines } from "./radialLines.ts";

interface Props {
  readonly frame: PlanFrame;
  readonly heading_deg: number;
  readonly element: ElementPlan;
  /** Of all elements; null while the answer shown knows none. */
  readonly currents: readonly RadialCurrents[] | null;
}

/** The radials of one element: thin lines, or as wide as their current where that is known. */
export function RadialsFromAbove({ frame, heading_deg, element, currents }: Props) {
  const own = currents?.find((field) => field.elementId === element.id);
  if (!currents || !own) return <path className="yard-radials" d={radialLines(frame, heading_deg, element)} />;
  return currentLines(frame, heading_deg, element, own, mostCurrent(currents)).map(({ width_px, d }) => (
    <path key={width_px} className="yard-radials" style={{ strokeWidth: width_px }} d={d} />
  ));
}
