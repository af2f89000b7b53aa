import { formatFeetInches } from "./formatFeetInches.ts";
import type { QuantityKind, UnitSystem } from "./QuantityKind.ts";
import { gaugeOfDiameter, nameOfGauge } from "./wireGauge.ts";

/** Writes a value of a kind as the field shows it: a text that `parseQuantity` reads back to within the last digit. */
export function formatQuantity(value: number, kind: QuantityKind, units: UnitSystem): string {
  if (!Number.isFinite(value)) return "–";
  switch (kind) {
    case "length_m":
      return units === "metric" ? `${fixed(value, 2, 3)} m` : formatFeetInches(value);
    case "diameter_mm":
      return units === "metric" ? `${fixed(value, 0, 2)} mm` : formatThickness(value);
    case "distance_km":
      return units === "metric" ? `${fixed(value, 0, 1)} km` : `${fixed(value / 1.609344, 0, 1)} mi`;
    case "frequency_MHz":
      return `${fixed(value, 3, 6)} MHz`;
    case "conductivity_SPerM":
      return `${fixed(value * 1000, 0, 3)} mS/m`;
    case "angle_deg":
      return `${fixed(value, 0, 1)}°`;
    case "bearing_deg":
      return formatBearing(value);
    case "resistance_ohm":
      return `${fixed(value, 0, 2)} Ω`;
    case "power_W":
      return `${fixed(value, 0, 1)} W`;
    case "count":
    case "ratio":
      return fixed(value, 0, 3);
  }
}

/** The same value in the other system of units, or null where there is nothing to convert. */
export function formatOtherUnits(value: number, kind: QuantityKind, units: UnitSystem): string | null {
  if (kind !== "length_m" && kind !== "diameter_mm" && kind !== "distance_km") return null;
  return formatQuantity(value, kind, units === "metric" ? "imperial" : "metric");
}

function formatThickness(value_mm: number): string {
  const gauge = gaugeOfDiameter(value_mm);
  return gauge === null ? `${fixed(value_mm / 25.4, 0, 3)} in` : nameOfGauge(gauge);
}

/** Three figures before the point, as bearings are written: 062°, 007.5°, and 000° for 359.97°. */
function formatBearing(value: number): string {
  const tenths = ((Math.round(value * 10) % 3600) + 3600) % 3600;
  const whole = String(Math.floor(tenths / 10)).padStart(3, "0");
  return tenths % 10 === 0 ? `${whole}°` : `${whole}.${tenths % 10}°`;
}

/** At least `least` decimals, at most `most`, no needless zeros between. */
function fixed(value: number, least: number, most: number): string {
  const text = value.toFixed(most);
  let end = text.length;
  const shortest = most === least ? end : end - (most - least);
  while (end > shortest && text[end - 1] === "0") end--;
  if (text[end - 1] === ".") end--;
  const cut = text.slice(0, end);
  return Number(cut) === 0 ? cut.replace("-", "") : cut.replace("-", "−");
}
