import type { LadderRow } from "./ladderRows.ts";

export interface LadderScale {
  readonly from_dBi: number;
  readonly to_dBi: number;
  /** 0..1 along the track; NaN for what is not finite. */
  place(gain_dBi: number): number;
}

/** Ends stand on multiples of this, so that the scale rests while a design is dragged. */
const step_dB = 5;

/** One common scale for all rungs, live and baseline: the least span on multiples of 5 dB that holds them, 10 dB at least. */
export function ladderScale(rows: readonly LadderRow[]): LadderScale {
  const gains = rows.flatMap((r) => [r.now_dBi, r.baseline_dBi]).filter(Number.isFinite);
  const low = gains.length > 0 ? Math.min(...gains) : -5;
  const high = gains.length > 0 ? Math.max(...gains) : 5;
  const from_dBi = Math.floor(low / step_dB) * step_dB;
  const to_dBi = Math.max(Math.ceil(high / step_dB) * step_dB, from_dBi + 2 * step_dB);
  return {
    from_dBi,
    to_dBi,
    place: (gain) => (Number.isFinite(gain) ? (gain - from_dBi) / (to_dBi - from_dBi) : Number.NaN),
  };
}
