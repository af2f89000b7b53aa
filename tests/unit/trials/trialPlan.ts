import { type PaceRequest, type SavedPlan, withGround } from "../../../engine/index.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";

/** Over perfect ground the real engine answers in a millisecond or two. */
export const quickPlan: SavedPlan = withGround(demoPlan, { kind: "perfect" });

export const walk: PaceRequest = {
  kind: "pace",
  plan: quickPlan,
  look: { pathElevation_deg: 8, rearSector_deg: 120, arrival_deg: { from: 4, to: 14 } },
  spacing_wl: { from: 0.08, to: 0.3, points: 23 },
  lengths: "fixed",
};
