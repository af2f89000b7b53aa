import { EPS0_FPerM } from "../constants.ts";
import type { WireProblem } from "../contract.ts";
import type { FarGround } from "./makeFarField.ts";

/** Ground as the far field sees it: complex relative permittivity εᵣ − jσ/(ωε₀), time factor e^{+jωt}. */
export function farGround({ ground, frequency_Hz }: WireProblem): FarGround {
  switch (ground.kind) {
    case "free-space":
      return { kind: "none" };
    case "perfect":
      return { kind: "plane", epsRe: Number.POSITIVE_INFINITY, epsIm: 0 };
    case "soil":
      return {
        kind: "plane",
        epsRe: ground.relativePermittivity,
        epsIm: -ground.conductivity_SPerM / (2 * Math.PI * frequency_Hz * EPS0_FPerM),
      };
  }
}
