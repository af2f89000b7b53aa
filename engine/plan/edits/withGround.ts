import type { Ground, Plan, SoilModel } from "../../contract.ts";

/** The plan over another ground; the soil model stays unless given. */
export function withGround<P extends Plan>(plan: P, ground: Ground, soilModel: SoilModel = plan.soilModel): P {
  return { ...plan, ground, soilModel };
}
