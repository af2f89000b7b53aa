import type { BestWeights, MapFigure } from "../../../engine/index.ts";

/**
 * What the person has set in the room of trials. Lengths are in wavelengths or in parts of the plan's own, so that they
 * go on making sense when another band is chosen.
 */
export interface TrialChoices {
  /** Elevations at which the path's signals arrive; null: some degrees about the path's own. */
  readonly arrival: { readonly from_deg: number; readonly to_deg: number } | null;
  readonly pace: { readonly from_wl: number; readonly to_wl: number; readonly lengths: "fixed" | "retuned" };
  readonly map: {
    readonly from_wl: number;
    readonly to_wl: number;
    /** Reflector lengths looked at: so much less and more than the plan's. */
    readonly less: number;
    readonly more: number;
    readonly figure: MapFigure;
    readonly swrLimit: number;
    /** What the garden allows; null: it sets no bound. */
    readonly mostSpacing_m: number | null;
    readonly mostHeight_m: number | null;
  };
  readonly best: {
    readonly weights: BestWeights;
    readonly driven_wl: readonly [number, number];
    readonly reflector_wl: readonly [number, number];
    readonly spacing_wl: readonly [number, number];
    /** Most reactance of a coil in the reflector's base; 0: no coil. */
    readonly coil_ohm: number;
    /** Most wire in all; null: as much as it takes. */
    readonly wire_m: number | null;
    /** Highest SWR over the band that a design may have. */
    readonly swr: number;
    readonly seed: number;
  };
  readonly radials: {
    /** Wire at hand; null: as much as the plan's radials are. */
    readonly wire_m: number | null;
    /** Height of the raised radials that are held against those as in the plan; null: none are. */
    readonly raised_m: number | null;
  };
  readonly band: {
    /** How far beyond the band is looked, as a part of its middle. */
    readonly beyond: number;
    readonly swr: number;
    readonly frontToBack_dB: number;
    readonly forwardWithin_dB: number;
  };
  readonly tolerance: {
    readonly driven_m: number;
    readonly reflector_m: number;
    readonly spacing_m: number;
    /** As a part of the uprights' thickness. */
    readonly thickness: number;
    readonly heading_deg: number;
    /** The soil's constants: dry by this factor less, wet by it more; 1: as in the plan. */
    readonly soil: 1 | 2 | 3;
    readonly draws: number;
  };
}

export const firstChoices: TrialChoices = {
  arrival: null,
  pace: { from_wl: 0.05, to_wl: 0.5, lengths: "fixed" },
  map: {
    from_wl: 0.05,
    to_wl: 0.4,
    less: 0.08,
    more: 0.08,
    figure: "frontToBack",
    swrLimit: 2,
    mostSpacing_m: null,
    mostHeight_m: null,
  },
  best: {
    weights: { forward: 1, back: 0.3, rear: 0.2, swr: 1 },
    driven_wl: [0.22, 0.27],
    reflector_wl: [0.22, 0.29],
    spacing_wl: [0.08, 0.35],
    coil_ohm: 0,
    wire_m: null,
    swr: 3,
    seed: 1,
  },
  radials: { wire_m: null, raised_m: 1 },
  band: { beyond: 0.05, swr: 2, frontToBack_dB: 6, forwardWithin_dB: 0.5 },
  tolerance: {
    driven_m: 0.02,
    reflector_m: 0.02,
    spacing_m: 0.05,
    thickness: 0.05,
    heading_deg: 3,
    soil: 2,
    draws: 400,
  },
};
