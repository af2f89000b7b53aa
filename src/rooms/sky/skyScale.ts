import type { DesignTrace } from "../../charts/DesignTrace.ts";
import { outerRing_dBi } from "../../charts/gainScale.ts";

interface SkyScale {
  readonly outer_dBi: number;
  /** A curve reaches past the held outer ring. */
  readonly isOutgrown: boolean;
}

/** One scale for both cuts and all designs: the held one, or the one that fits them all. */
export function skyScale(traces: readonly DesignTrace[], held_dBi: number | null): SkyScale {
  const gains = traces.flatMap(({ readout }) =>
    readout ? [...readout.elevationCut.gain_dBi, ...readout.azimuthCut.gain_dBi] : [],
  );
  const fitting = outerRing_dBi(gains);
  if (held_dBi === null) return { outer_dBi: fitting, isOutgrown: false };
  return { outer_dBi: held_dBi, isOutgrown: gains.some((g) => g > held_dBi) };
}
