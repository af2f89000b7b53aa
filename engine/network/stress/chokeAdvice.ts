export interface ChokeAdvice {
  readonly id: "dense-screen" | "sparse-or-raised";
  /** The range to aim at on the frequency used, mostly resistive. */
  readonly least_ohm: number;
  readonly better_ohm: number;
  readonly character: "resistive";
  readonly place: "feedpoint";
  readonly reasons: readonly string[];
  readonly provenance: string;
}

/** Radials lying on the ground from which on a screen counts as dense here: a choice of this project (common practice says 16). */
export const DENSE_SCREEN = 16;

/**
 * What a common-mode choke has to do for a vertical with such radials, as numbers and reasons. Common practice, not a law:
 * a few hundred ohm are held to be enough over a full screen on the ground, several thousand for few or raised radials,
 * where the cable's outside offers itself as one more radial.
 *
 * @param radialCount of the fed element; @param raised whether they stand above the ground
 */
export function chokeAdvice(radialCount: number, raised: boolean): ChokeAdvice {
  const dense = !raised && radialCount >= DENSE_SCREEN;
  return {
    id: dense ? "dense-screen" : "sparse-or-raised",
    least_ohm: dense ? 500 : 2000,
    better_ohm: dense ? 1000 : 5000,
    character: "resistive",
    place: "feedpoint",
    reasons: [
      "Current on the outside of the cable radiates: it fills the pattern's nulls and brings noise from the house.",
      "A reactive choke can be in resonance with the cable's outside and let more through; a resistive one cannot.",
      dense
        ? "Over a dense screen on the ground the cable is one path among many, so a moderate choke is enough."
        : "With few or raised radials the cable's outside is as good a path as a radial, so the choke must be strong.",
    ],
    provenance:
      "common practice (J. Brown's choke notes and T. Rauch on choke size, read in excerpts); the exact figures are chosen here",
  };
}
