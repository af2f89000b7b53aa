import type { BandRequest, SavedPlan } from "../../engine/index.ts";

/** Enough for a smooth SWR curve of a vertical: its impedance turns slowly across one band. */
const points = 33;

/** The sweep behind the SWR chart: the band, a sixth more on either side, and the design frequency in any case. */
export function bandRequest(plan: SavedPlan): BandRequest {
  const from = plan.band?.from_MHz ?? plan.frequency_MHz * 0.98;
  const to = plan.band?.to_MHz ?? plan.frequency_MHz * 1.02;
  const margin = (to - from) / 6;
  return {
    from_MHz: Math.min(from, plan.frequency_MHz) - margin,
    to_MHz: Math.max(to, plan.frequency_MHz) + margin,
    points,
  };
}
