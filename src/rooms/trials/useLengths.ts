import { useMemo } from "react";
import { FOOT_m } from "../../../engine/index.ts";
import { figure } from "../../charts/figure.ts";
import { useSettings } from "../../store/useSettings.ts";
import { formatQuantity } from "../../ui/quantity/formatQuantity.ts";

export interface Lengths {
  /** On axes: metres, or feet with a decimal point, which can be divided evenly. */
  readonly unit: "m" | "ft";
  readonly perMetre: number;
  readonly onAxis: (value: number) => string;
  /** In words and tables. */
  readonly text: (length_m: number) => string;
  /** To the centimetre, for what was found rather than set. */
  readonly near: (length_m: number) => string;
  /** Below a metre or so. */
  readonly small: (length_m: number) => string;
  /** Round lengths, without decimals. */
  readonly round: (length_m: number) => string;
}

/** Lengths as the person reads them. */
export function useLengths(): Lengths {
  const units = useSettings((s) => s.units);
  return useMemo(
    () => ({
      unit: units === "metric" ? "m" : "ft",
      perMetre: units === "metric" ? 1 : 1 / FOOT_m,
      onAxis: (value) => figure(value, 2).replace(/\.?0+$/, ""),
      text: (length_m) => formatQuantity(length_m, "length_m", units),
      near: (length_m) => formatQuantity(Math.round(length_m * 100) / 100, "length_m", units),
      small: (length_m) =>
        units === "metric" ? `${figure(100 * length_m, 0)} cm` : formatQuantity(length_m, "length_m", units),
      round: (length_m) => (units === "metric" ? `${figure(length_m, 0)} m` : `${figure(length_m / FOOT_m, 0)} ft`),
    }),
    [units],
  );
}
