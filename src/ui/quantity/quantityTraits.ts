import type { QuantityKind, UnitSystem } from "./QuantityKind.ts";

interface Traits {
  /** The unit of the value, spelt for the unit library; null for a bare number. */
  readonly unit: string | null;
  /** What a number without a unit is taken to be. */
  readonly bare: Readonly<Record<UnitSystem, string | null>>;
  /** Shown in small type beside the label. */
  readonly hint: Readonly<Record<UnitSystem, string>>;
  /** What to say when the unit does not fit. */
  readonly wanted: string;
}

/** Units in and out of each kind of quantity. */
export const quantityTraits: Readonly<Record<QuantityKind, Traits>> = {
  length_m: {
    unit: "m",
    bare: { metric: "m", imperial: "ft" },
    hint: { metric: "m", imperial: "ft in" },
    wanted: "a length such as 10.2 m, 33 ft 6 in or 0.24 wl",
  },
  diameter_mm: {
    unit: "mm",
    bare: { metric: "mm", imperial: "in" },
    hint: { metric: "mm", imperial: "AWG or in" },
    wanted: "a thickness such as 1.6 mm, 14 AWG or 1/2 in",
  },
  distance_km: {
    unit: "km",
    bare: { metric: "km", imperial: "mile" },
    hint: { metric: "km", imperial: "mi" },
    wanted: "a distance such as 300 km or 180 mi",
  },
  frequency_MHz: {
    unit: "MHz",
    bare: { metric: "MHz", imperial: "MHz" },
    hint: { metric: "MHz", imperial: "MHz" },
    wanted: "a frequency such as 7.1 MHz or 7100 kHz",
  },
  conductivity_SPerM: {
    unit: "S/m",
    bare: { metric: "mS/m", imperial: "mS/m" },
    hint: { metric: "mS/m", imperial: "mS/m" },
    wanted: "a conductivity such as 5 mS/m or 0.005 S/m",
  },
  angle_deg: {
    unit: "deg",
    bare: { metric: "deg", imperial: "deg" },
    hint: { metric: "degrees", imperial: "degrees" },
    wanted: "an angle in degrees such as 62",
  },
  bearing_deg: {
    unit: "deg",
    bare: { metric: "deg", imperial: "deg" },
    hint: { metric: "true", imperial: "true" },
    wanted: "a bearing in degrees from true north such as 62",
  },
  resistance_ohm: {
    unit: "ohm",
    bare: { metric: "ohm", imperial: "ohm" },
    hint: { metric: "Ω", imperial: "Ω" },
    wanted: "ohms such as 12.5",
  },
  power_W: {
    unit: "W",
    bare: { metric: "W", imperial: "W" },
    hint: { metric: "W", imperial: "W" },
    wanted: "a power such as 100 W or 1.5 kW",
  },
  count: {
    unit: null,
    bare: { metric: null, imperial: null },
    hint: { metric: "", imperial: "" },
    wanted: "a whole number such as 16",
  },
  ratio: {
    unit: null,
    bare: { metric: null, imperial: null },
    hint: { metric: "", imperial: "" },
    wanted: "a number such as 13",
  },
};
