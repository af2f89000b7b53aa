import type { Cut, PlanReadout } from "../../../engine/index.ts";
import type { DesignTrace } from "../../charts/DesignTrace.ts";
import { outerRing_dBi } from "../../charts/gainScale.ts";
import { oncePer } from "../../oncePer.ts";

interface SkyScale {
  readonly outer_dBi: number;
  /** A curve reaches past the held outer ring. */
  readonly isOutgrown: boolean;
}

/** One scale for both cuts and all designs: the held one, or the one that fits them all. */
export function skyScale(traces: readonly DesignTrace[], held_dBi: number | null): SkyScale {
  const loudest = traces.flatMap(({ readout }) => (readout ? [loudest_dBi(readout)] : []));
  if (held_dBi === null) return { outer_dBi: outerRing_dBi(loudest), isOutgrown: false };
  return { outer_dBi: held_dBi, isOutgrown: loudest.some((gain) => gain > held_dBi) };
}

/** The largest gain in either cut, looked for once a design: it is asked for in every frame of a drag, of pins too. */
const loudest_dBi = oncePer(({ elevationCut, azimuthCut }: PlanReadout) =>
  Math.max(largest(elevationCut), largest(azimuthCut)),
);

function largest({ gain_dBi }: Cut): number {
  let found = Number.NEGATIVE_INFINITY;
  // Not by Math.max: a gap in the cut would make it NaN.
  for (const gain of gain_dBi) if (gain > found) found = gain;
  return found;
}
