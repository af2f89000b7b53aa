import type { ElementPlan, Plan } from "../contract.ts";

/** How a plan's radials enter the equations. */
export type Footing = "screen" | "wires" | "ground plane";

/** What an element stands on: a screen in the soil preview, the plane itself over perfect ground, else wires. */
export function footing(plan: Plan, element: ElementPlan): Footing {
  switch (plan.ground.kind) {
    case "free-space":
      return "wires";
    case "perfect":
      return element.radials.height_m > 0 ? "wires" : "ground plane";
    case "soil":
      return plan.soilModel === "full-wave" ? "wires" : "screen";
  }
}
