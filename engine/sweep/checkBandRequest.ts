import type { BandRequest } from "../readouts/PlanReadout.ts";
import { failed, ok, type Result } from "../result.ts";

const MOST_POINTS = 401;

/** Whether a band can be swept: its edges in order, and a sensible number of points. */
export function checkBandRequest(request: BandRequest): Result<BandRequest> {
  const { from_MHz, to_MHz, points, elevation_deg } = request;
  if (!(from_MHz > 0 && to_MHz > from_MHz))
    return failed({
      code: "band-order",
      where: "band",
      message: `The band runs from ${from_MHz} to ${to_MHz} MHz; the upper edge must lie above the lower.`,
    });
  if (!(Number.isInteger(points) && points >= 2 && points <= MOST_POINTS))
    return failed({
      code: "band-points",
      where: "band",
      message: `${points} points; the limits are 2 and ${MOST_POINTS}.`,
    });
  if (elevation_deg !== undefined && !(elevation_deg >= 0 && elevation_deg <= 90))
    return failed({
      code: "band-elevation",
      where: "band",
      message: `The beam is asked for at ${elevation_deg} degrees; the limits are 0 and 90.`,
    });
  return ok(request);
}
