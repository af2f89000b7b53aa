import { FOOT_m } from "../../../engine/index.ts";

export interface ScaleBar {
  readonly length_px: number;
  readonly label: string;
}

/** The longest bar of 1, 2 or 5 × 10ⁿ metres or feet that is at most `most_px` long. */
export function scaleBar(pxPerM: number, units: "metric" | "imperial", most_px: number): ScaleBar {
  const pxPerUnit = units === "metric" ? pxPerM : pxPerM * FOOT_m;
  const most = most_px / pxPerUnit;
  const decade = 10 ** Math.floor(Math.log10(most));
  // 1e-9: a bar that fits exactly must not be lost to rounding.
  const lead = [5, 2, 1].find((step) => step * decade <= most * (1 + 1e-9)) ?? 1;
  const length = Number((lead * decade).toPrecision(1));
  const label = units === "metric" ? metres(length) : `${length} ft`;
  return { length_px: length * pxPerUnit, label };
}

function metres(length: number): string {
  return length < 1 ? `${Math.round(length * 100)} cm` : `${length} m`;
}
