import { type Complex, fromReflection, type Ladder, matchPath } from "../../../../engine/index.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import type { UnitSystem } from "../../../ui/quantity/QuantityKind.ts";
import { sectionWords } from "../match/sectionWords.ts";

/** The way of a match as rows to read: after which part what impedance stands, from antenna to rig. */
export function matchSteps(
  ladder: Ladder,
  frequency_MHz: number,
  antenna_ohm: Complex,
  reference_ohm: number,
  units: UnitSystem,
): readonly (readonly [string, string])[] {
  const after = matchPath(ladder, frequency_MHz, antenna_ohm, reference_ohm, 1).map(({ section, points }) => {
    const z = fromReflection(points.at(-1)!, reference_ohm);
    return [sectionWords(section, units), impedanceText(z.re, z.im)] as const;
  });
  return [["at the feedpoint", impedanceText(antenna_ohm.re, antenna_ohm.im)], ...after];
}
