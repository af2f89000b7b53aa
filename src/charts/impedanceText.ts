import { figure, noFigure } from "./figure.ts";

/** R + jX as it is written: 31.2 + j12.4 Ω; decimals shrink as the numbers grow. */
export function impedanceText(resistance_ohm: number, reactance_ohm: number): string {
  if (!Number.isFinite(resistance_ohm) || !Number.isFinite(reactance_ohm)) return noFigure;
  const decimals = Math.max(Math.abs(resistance_ohm), Math.abs(reactance_ohm)) < 100 ? 1 : 0;
  const sign = figure(reactance_ohm, decimals).startsWith("−") ? "−" : "+";
  return `${figure(resistance_ohm, decimals)} ${sign} j${figure(Math.abs(reactance_ohm), decimals)} Ω`;
}
