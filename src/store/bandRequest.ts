import { type BandRequest, interestOf, type SavedPlan } from "../../engine/index.ts";
import { bandSpan } from "./bandSpan.ts";

/** Enough for a smooth SWR curve of a vertical: its impedance turns slowly across one band. */
const points = 33;

/** The sweep behind the SWR chart: the band, a sixth more on either side, and the design frequency in any case. */
export function bandRequest(plan: SavedPlan): BandRequest {
  const { from_MHz: from, to_MHz: to } = bandSpan(plan.band, plan.frequency_MHz);
  const margin = (to - from) / 6;
  return {
    from_MHz: Math.min(from, plan.frequency_MHz) - margin,
    to_MHz: Math.max(to, plan.frequency_MHz) + margin,
    points,
    elevation_deg: interestOf(plan).elevation_deg,
  };
}
