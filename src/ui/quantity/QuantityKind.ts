/**
 * What a quantity field holds. The name ends in the unit of its value, which is the unit plans keep, so that what a
 * person types travels into a plan and back without a conversion eating its last digits.
 */
export type QuantityKind =
  | "length_m"
  | "diameter_mm"
  | "frequency_MHz"
  | "conductivity_SPerM"
  | "angle_deg"
  | "bearing_deg"
  | "resistance_ohm"
  | "power_W"
  | "distance_km"
  | "count"
  | "ratio";

export type UnitSystem = "metric" | "imperial";

/** What a reader of quantities has to know besides the text. */
export interface QuantityContext {
  readonly units: UnitSystem;
  /** Gives `wl` and `λ` a length. Absent: they are refused with a reason. */
  readonly wavelength_m?: number;
  /** Gives a trailing `%` a meaning in lengths and diameters: so much longer than this. */
  readonly percentOver?: { readonly value: number; readonly name: string };
}

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly message: string };
