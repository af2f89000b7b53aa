import type { EndVoltages } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";

/**
 * Rows of the table of stresses for what stands at the ends of wires.
 *
 * @param nameOf what an element is called
 * @param amperes the current of the fed base, rms
 */
export function endRows(
  ends: readonly EndVoltages[],
  nameOf: (elementId: string) => string,
  amperes: number,
): readonly (readonly string[])[] {
  const row = (where: string, perAmpere: number) => [
    where,
    "–",
    "–",
    `${figure(perAmpere * amperes, 0)} V`,
    `${figure(perAmpere * amperes * Math.SQRT2, 0)} V`,
  ];
  return ends.flatMap(({ elementId, tip_VPerA, radialEnd_VPerA }) => [
    row(`tip of the ${nameOf(elementId)}`, tip_VPerA),
    ...(radialEnd_VPerA === undefined
      ? []
      : [row(`ends of the ${nameOf(elementId)}’s radials, at most`, radialEnd_VPerA)]),
  ]);
}
