import type { Complex, ElementBase } from "../../contract.ts";

export interface RelayState {
  readonly id: "forward" | "reverse" | "single" | "grounded";
  /** In plain words. */
  readonly name: string;
  /** One per element: how its base stands, ready to be put into a plan, and its two contacts. */
  readonly elements: readonly {
    readonly elementId: string;
    readonly base: ElementBase;
    readonly contacts: { readonly feed: boolean; readonly load: boolean; readonly ground: boolean };
  }[];
}

/**
 * The states of a pair of like elements that can be turned round: each base has a contact to the rig's line, one to its
 * reflector load, one straight to its radials; which are closed in each state. "front" is the element ahead in the forward
 * state. "single": the front one fed, the other's base open and so nearly out of the picture. "grounded": both bases
 * on their radials, nothing fed: for storms, no protection against a near stroke.
 *
 * @param load_ohm of the base behind, as `reversalLoads` gives it at the frequency of the plan
 */
export function relayStates(frontId: string, backId: string, load_ohm: Complex): readonly RelayState[] {
  const fed = { base: { kind: "fed" }, contacts: { feed: true, load: false, ground: false } } as const;
  const open = { base: { kind: "open" }, contacts: { feed: false, load: false, ground: false } } as const;
  const grounded = { base: { kind: "joined" }, contacts: { feed: false, load: false, ground: true } } as const;
  const loaded = {
    base: { kind: "loaded", resistance_ohm: load_ohm.re, reactance_ohm: load_ohm.im },
    contacts: { feed: false, load: true, ground: false },
  } as const;
  type Base = Omit<RelayState["elements"][number], "elementId">;
  const state = (id: RelayState["id"], name: string, front: Base, back: Base): RelayState => ({
    id,
    name,
    elements: [
      { elementId: frontId, ...front },
      { elementId: backId, ...back },
    ],
  });
  return [
    state("forward", "front fed, back is the reflector", fed, loaded),
    state("reverse", "back fed, front is the reflector", loaded, fed),
    state("single", "front fed, back open", fed, open),
    state("grounded", "both bases on their radials, nothing fed", grounded, grounded),
  ];
}
