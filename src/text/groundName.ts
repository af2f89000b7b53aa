import type { Ground } from "../../engine/index.ts";
import { figure } from "../charts/figure.ts";

/** The ground in a few words, with the numbers that name a soil better than its nickname does. */
export function groundName(ground: Ground): string {
  switch (ground.kind) {
    case "free-space":
      return "no ground at all";
    case "perfect":
      return "perfect ground";
    case "soil": {
      const { relativePermittivity, conductivity_SPerM } = ground;
      const mS = conductivity_SPerM * 1000;
      return `soil of ${figure(relativePermittivity, relativePermittivity % 1 ? 1 : 0)}, ${figure(mS, mS % 1 ? 1 : 0)} mS/m`;
    }
  }
}
