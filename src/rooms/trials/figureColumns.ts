import type { FigureCurves } from "../../../engine/index.ts";

/** The figures of a walk, map or band as columns of a saved table. */
export function figureColumns(figures: FigureCurves): {
  readonly heads: readonly string[];
  readonly row: (i: number) => readonly (number | null)[];
} {
  const columns: readonly (readonly [string, readonly number[] | undefined])[] = [
    ["gain ahead [dBi]", figures.forward_dBi],
    ["gain straight back [dBi]", figures.back_dBi],
    ["front to back [dB]", figures.frontToBack_dB],
    ["loudest behind [dBi]", figures.worstRear_dBi],
    ["front to loudest behind [dB]", figures.frontToRear_dB],
    ["gain ahead over the arrival angles [dBi]", figures.pathGain_dBi],
    ["R [ohm]", figures.resistance_ohm],
    ["X [ohm]", figures.reactance_ohm],
    ["SWR to 50 ohm", figures.swr50],
  ];
  const there = columns.filter(([, values]) => values !== undefined);
  return { heads: there.map(([head]) => head), row: (i) => there.map(([, values]) => values![i] ?? null) };
}
