import { awgDiameter_mm, INCH_m } from "../../../engine/index.ts";
import type { QuantityKind, UnitSystem } from "./QuantityKind.ts";
import { gaugeOfDiameter, thickestGauge, thinnestGauge } from "./wireGauge.ts";

/** What one press of an arrow key moves a value by; Shift takes ten of them. */
export function quantityStep(kind: QuantityKind, units: UnitSystem): number {
  switch (kind) {
    case "length_m":
      return units === "metric" ? 0.01 : INCH_m / 2;
    case "diameter_mm":
      return units === "metric" ? 0.1 : (INCH_m * 1000) / 16;
    case "distance_km":
      return units === "metric" ? 10 : 16.09344;
    case "frequency_MHz":
      return 0.005;
    case "conductivity_SPerM":
      return 0.0005;
    case "power_W":
      return 10;
    case "angle_deg":
    case "bearing_deg":
    case "resistance_ohm":
    case "count":
    case "ratio":
      return 1;
  }
}

/**
 * The next value up (`presses` > 0) or down on the grid of `step`: 10.104 m goes to 10.11 m, not to 10.114 m, so that
 * a few presses end on figures a tape shows. Wire in inch countries steps by gauge, thicker upwards.
 */
export function stepQuantity(value: number, presses: number, kind: QuantityKind, units: UnitSystem): number {
  if (kind === "diameter_mm" && units === "imperial") {
    const gauge = gaugeOfDiameter(value);
    const next = gauge === null ? Number.NaN : gauge - presses;
    if (next >= thickestGauge && next <= thinnestGauge) return awgDiameter_mm(next);
  }
  const stepped = stepOnGrid(value, presses, quantityStep(kind, units));
  return kind === "bearing_deg" ? ((stepped % 360) + 360) % 360 : stepped;
}

/** Moves `presses` places along the grid of `step`; a value between two places goes to the nearer end of the first. */
export function stepOnGrid(value: number, presses: number, step: number): number {
  const place = value / step;
  // 1e-6 of a place: a value that rounding put beside its grid point is on it.
  const from = presses > 0 ? Math.floor(place + 1e-6) : Math.ceil(place - 1e-6);
  return Number(((from + presses) * step).toPrecision(12));
}
