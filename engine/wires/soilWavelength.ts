import type { WireProblem } from "../contract.ts";
import { halfSpaceOf } from "../kernel/halfSpace/HalfSpace.ts";
import { imagesCurrents } from "./imagesCurrents.ts";

/** 2π/|k1| [m], the length over which currents change in soil; undefined where no wire can be in it. */
export function soilWavelength_m(
  problem: Pick<WireProblem, "ground" | "soilModel" | "frequency_Hz">,
): number | undefined {
  const { ground, frequency_Hz } = problem;
  if (ground.kind !== "soil" || imagesCurrents(problem)) return undefined;
  const { k1Re, k1Im } = halfSpaceOf(frequency_Hz, ground.relativePermittivity, ground.conductivity_SPerM);
  return (2 * Math.PI) / Math.sqrt(k1Re * k1Re + k1Im * k1Im);
}
