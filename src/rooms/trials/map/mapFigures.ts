import type { FigureCurves, MapFigure } from "../../../../engine/index.ts";

interface Shown {
  readonly label: string;
  readonly unit: string;
  readonly decimals: number;
  /** How it is called in a sentence about its best place. */
  readonly best: string;
  /** Whether less is better. */
  readonly isLow: boolean;
  values(figures: FigureCurves): readonly number[];
}

/** The figures a map can show. */
export const mapFigures: Readonly<Record<MapFigure, Shown>> = {
  frontToBack: {
    label: "Front to back",
    unit: "dB",
    decimals: 1,
    best: "quietest straight back",
    isLow: false,
    values: (f) => f.frontToBack_dB,
  },
  frontToRear: {
    label: "Front to worst behind",
    unit: "dB",
    decimals: 1,
    best: "quietest all round behind",
    isLow: false,
    values: (f) => f.frontToRear_dB,
  },
  forward: {
    label: "Gain ahead",
    unit: "dBi",
    decimals: 2,
    best: "loudest ahead",
    isLow: false,
    values: (f) => f.forward_dBi,
  },
  swr: {
    label: "SWR",
    unit: "",
    decimals: 2,
    best: "lowest SWR",
    isLow: true,
    values: (f) => f.swr50,
  },
};

/** Levels of a contour map: for SWR those people speak of, else some ten even ones. */
export function mapThresholds(figure: MapFigure, values: readonly number[]): number[] {
  if (figure === "swr") return [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 7, 10];
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const v of values) {
    if (!Number.isFinite(v)) continue;
    low = Math.min(low, v);
    high = Math.max(high, v);
  }
  if (!(high > low)) return [];
  // A beam turned round is of no use, however far; and a deep null would take all the levels for itself.
  low = Math.max(low, figure === "forward" ? high - 10 : Math.min(-4, high - 4));
  const step = [0.05, 0.1, 0.2, 0.5, 1, 2, 3, 5].find((one) => (high - low) / one <= 12) ?? 5;
  const first = Math.ceil(low / step) * step;
  return Array.from({ length: Math.floor((high - first) / step) + 1 }, (_, i) => Number((first + i * step).toFixed(6)));
}
