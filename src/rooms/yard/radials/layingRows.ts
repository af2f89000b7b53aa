import type { Plan } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import type { Layings } from "../../../store/Answer.ts";
import { inModel } from "../../../store/answerModels.ts";
import { keyOf } from "../../../store/designs.ts";
import { lieOf, radialLies } from "../radialLies.ts";

export interface LayingRow {
  readonly lie: string;
  readonly isNow: boolean;
  readonly impedance: string;
  readonly swr: string;
  readonly forward: string;
  readonly frontToBack: string;
}

/** The rows in words and figures; null where they belong to another plan than this. */
export function readoutRows(
  { plan: of, rows }: Layings,
  plan: Plan,
): { readonly elevation_deg: number; readonly list: readonly LayingRow[] } | null {
  if (keyOf(of, {}) !== keyOf(inModel(plan, "full-wave"), {})) return null;
  const now = lieOf(plan.elements[0]!.radials.height_m);
  return {
    elevation_deg: rows[0]!.readout.path.elevation_deg,
    list: rows.map(({ height_m, readout }) => {
      const { impedance_ohm, swr50 } = readout.feeds[0]!;
      const lie = radialLies.find((one) => one.id === lieOf(height_m))!;
      return {
        lie: lie.name,
        isNow: lie.id === now,
        impedance: impedanceText(impedance_ohm.re, impedance_ohm.im),
        swr: figure(swr50, 2),
        forward: `${figure(readout.path.forward_dBi, 1)} dBi`,
        frontToBack: `${figure(readout.path.frontToBack_dB, 1)} dB`,
      };
    }),
  };
}
