import { useMemo } from "react";
import { layRadials, type Plan } from "../../../engine/index.ts";
import { currentLines, mostCurrent, type RadialCurrents } from "./currentLines.ts";
import type { PlanFrame } from "./planFrame.ts";
import { radialLines } from "./radialLines.ts";

interface Props {
  readonly frame: PlanFrame;
  readonly heading_deg: number;
  readonly plan: Plan;
  /** Null while the answer shown knows none. */
  readonly currents: readonly RadialCurrents[] | null;
}

/** All radials and what joins them: thin lines, or as wide as their current where that is known. */
export function RadialsFromAbove({ frame, heading_deg, plan, currents }: Props) {
  const laid = useMemo(() => {
    const anywhere = plan.elements.map(() => 0);
    return layRadials(plan, anywhere);
  }, [plan]);
  if (!currents) return <path className="yard-radials" d={radialLines(frame, heading_deg, laid)} />;
  return currentLines(frame, heading_deg, currents, mostCurrent(currents)).map(({ width_px, d }) => (
    <path key={width_px} className="yard-radials" style={{ strokeWidth: width_px }} d={d} />
  ));
}
