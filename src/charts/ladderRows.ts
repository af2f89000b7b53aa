import type { PlanReadout, Rung } from "../../engine/index.ts";

/** One rung as the ladder prints it. Figures that do not exist are NaN. */
export interface LadderRow {
  readonly elevation_deg: number;
  readonly now_dBi: number;
  /** NaN without a baseline. */
  readonly baseline_dBi: number;
  /** now − baseline, forward. */
  readonly difference_dB: number;
  readonly frontToBack_dB: number;
  readonly frontToRear_dB: number;
  readonly carriesPath: boolean;
}

/** Two elevations nearer than this are one rung. */
const sameRung_deg = 0.05;

/**
 * The ladder's rungs, high angles first as on a ladder, from the live design and (when there is one) the baseline.
 * The path's own elevation always has a rung. A rung carries the path when it is that one, or lies in `carried`.
 */
export function ladderRows(
  live: PlanReadout,
  baseline: PlanReadout | null,
  carried?: { readonly from_deg: number; readonly to_deg: number },
): LadderRow[] {
  const path = live.path.elevation_deg;
  const rungs = withRung(live.ladder, live.path).toSorted((a, b) => b.elevation_deg - a.elevation_deg);
  const base = baseline ? withRung(baseline.ladder, baseline.path) : [];
  return rungs.map((now) => {
    const before = base.find((r) => isSame(r, now))?.forward_dBi ?? Number.NaN;
    const e = now.elevation_deg;
    return {
      elevation_deg: e,
      now_dBi: now.forward_dBi,
      baseline_dBi: before,
      difference_dB: now.forward_dBi - before,
      frontToBack_dB: now.frontToBack_dB,
      frontToRear_dB: now.frontToRear_dB,
      carriesPath:
        Math.abs(e - path) < sameRung_deg || (carried !== undefined && e >= carried.from_deg && e <= carried.to_deg),
    };
  });
}

const isSame = (a: Rung, b: Rung) => Math.abs(a.elevation_deg - b.elevation_deg) < sameRung_deg;

const withRung = (rungs: readonly Rung[], path: Rung) =>
  rungs.some((r) => isSame(r, path)) ? rungs : [...rungs, path];
