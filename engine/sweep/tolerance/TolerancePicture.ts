import type { Note } from "../../result.ts";

/** What may be off. */
export type Loose = "driven" | "reflector" | "spacing" | "thickness" | "soil" | "heading";

/** 5 of 100 lie below `low`, 5 above `high`. */
export interface ToleranceBand {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Figures of one design, or their slopes. */
export interface ToleranceFigures {
  readonly forward_dBi: number;
  readonly frontToBack_dB: number;
  readonly frontToRear_dB: number;
  readonly resistance_ohm: number;
  readonly reactance_ohm: number;
  readonly swr50: number;
}

/** What being off in one respect alone does. */
export interface Sensitivity {
  readonly what: Loose;
  /** The unit slopes and allowances are in: a centimetre of length, a percent of thickness, a degree; soil from dry to wet as 1. */
  readonly per: "cm" | "percent" | "degree" | "span";
  /** Change of every figure for one unit more, where the plan stands. */
  readonly slope: ToleranceFigures;
  /** Figures at the far ends of the error asked for; null where that is 0. */
  readonly ends: { readonly less: ToleranceFigures; readonly more: ToleranceFigures } | null;
  /**
   * How far off it may be alone, in its unit, until `LOST` is lost: of front to back, and of gain ahead; by the curve, not by
   * the slope. null: not within all that was looked at, `lookedAt` either way.
   */
  readonly allowed: {
    readonly frontToBack: { readonly less: number | null; readonly more: number | null };
    readonly forward: { readonly less: number | null; readonly more: number | null };
  };
  readonly lookedAt: { readonly less: number; readonly more: number };
}

export interface TolerancePicture {
  readonly kind: "tolerance";
  /** Made with the soil preview rather than the full model. */
  readonly isPreview: boolean;
  /** The plan itself. */
  readonly exact: ToleranceFigures;
  /** In the order driven, reflector, spacing, thickness, soil, heading; none for what the plan has not. */
  readonly sensitivities: readonly Sensitivity[];
  /** What `allowed` allows to be lost [dB]. */
  readonly lost: { readonly frontToBack_dB: number; readonly forward_dB: number };
  /** Of the designs drawn; null until the response is known. */
  readonly bands: {
    readonly draws: number;
    readonly forward_dBi: ToleranceBand;
    readonly frontToBack_dB: ToleranceBand;
    readonly frontToRear_dB: ToleranceBand;
    readonly resistance_ohm: ToleranceBand;
    readonly reactance_ohm: ToleranceBand;
    readonly swr50: ToleranceBand;
    readonly ladder: readonly {
      readonly elevation_deg: number;
      readonly forward_dBi: ToleranceBand;
      readonly back_dBi: ToleranceBand;
    }[];
    /** Like the workbench's cuts: angle 0 the horizon ahead, 180 behind. */
    readonly elevationCut: ToleranceCut;
    readonly azimuthCut: ToleranceCut;
  } | null;
  /** Absent until some drawn designs were solved: how far the response was off there, at most. */
  readonly error?: {
    readonly solved: number;
    readonly forward_dB: number;
    readonly frontToBack_dB: number;
    readonly impedance_ohm: number;
  };
  readonly solves: number;
  readonly notes: readonly Note[];
}

export interface ToleranceCut {
  readonly angle_deg: readonly number[];
  readonly low_dBi: readonly number[];
  readonly middle_dBi: readonly number[];
  readonly high_dBi: readonly number[];
}
