import type { Complex } from "../../contract.ts";
import type { Ladder, Section } from "../match/Ladder.ts";
import { sectionChain } from "../match/sectionChain.ts";
import { rigImpedance } from "../rigImpedance.ts";
import { toReflection } from "./toReflection.ts";

export interface PathStep {
  readonly section: Section;
  /** Γ as the part is put in, from none of it to all: an arc of a circle when the part has no loss. */
  readonly points: readonly Complex[];
}

/**
 * The way of a match across the reflection chart, part by part from antenna to rig, as points to draw a line through.
 * Each step starts where the one before ended; the first starts at the antenna, the last ends at what the rig sees.
 *
 * Series parts run along circles of constant resistance, parts across along circles of constant conductance, lines
 * clockwise around their own impedance (a spiral inwards when lossy).
 *
 * @param samples pieces of each step, 1 or more; the arc of a part then has samples + 1 points
 * @throws RangeError when samples is not a whole number above 0
 */
export function matchPath(
  ladder: Ladder,
  frequency_MHz: number,
  antenna_ohm: Complex,
  reference_ohm: number,
  samples = 32,
): readonly PathStep[] {
  if (!(Number.isInteger(samples) && samples > 0)) throw new RangeError(`matchPath: ${samples} samples`);
  let z = antenna_ohm;
  return ladder.map((section) => {
    const from = z;
    const at = (t: number) => rigImpedance(sectionChain(section, frequency_MHz, t), from);
    z = at(1);
    const points = Array.from({ length: samples + 1 }, (_, i) => toReflection(at(i / samples), reference_ohm));
    return { section, points };
  });
}
