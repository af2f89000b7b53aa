import type { Plan } from "../../engine/index.ts";
import { figure } from "../charts/figure.ts";
import type { Layings } from "../store/Answer.ts";
import { inModel } from "../store/answerModels.ts";
import { keyOf } from "../store/designs.ts";

/** How far the figures spread with the way few radials lie; null where they belong to another plan than this. */
export function spreadWords({ plan: of, rows }: Layings, plan: Plan): string | null {
  if (keyOf(of, {}) !== keyOf(inModel(plan, "full-wave"), {})) return null;
  const range = (values: readonly number[], decimals: number) =>
    `${figure(Math.min(...values), decimals)} to ${figure(Math.max(...values), decimals)}`;
  const { elevation_deg } = rows[0]!.readout.path;
  const forward = range(
    rows.map(({ readout }) => readout.path.forward_dBi),
    1,
  );
  const swr = range(
    rows.map(({ readout }) => readout.feeds[0]!.swr50),
    1,
  );
  const behind = range(
    rows.map(({ readout }) => readout.path.frontToBack_dB),
    1,
  );
  return `With so few radials it matters how they lie: on bare earth, held up by grass or slit in, the full answer runs from ${forward} dBi forward at ${elevation_deg}°, front-to-back from ${behind} dB, SWR from ${swr}.`;
}
