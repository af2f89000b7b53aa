import {
  GROUND,
  type Line,
  type Network,
  type Part,
  type RelayState,
  type ReversalLoad,
} from "../../../../engine/index.ts";

export const places = ["front", "back"] as const;
export const jobs = ["feed", "load", "ground"] as const;
export type ContactId = `${(typeof jobs)[number]} ${(typeof places)[number]}`;

/**
 * Two bases with three relay contacts each, as a network: one to the line from the rig, one to a load of its own, one
 * to the radials. A closed contact carries the current it really would, an open one stands off the voltage.
 *
 * @param line the stub's cable, where the load is a stub
 */
export function relayNetwork(
  state: RelayState,
  load: ReversalLoad,
  coilQ: number,
  capacitorQ: number,
  line: Line,
): Network {
  const parts = state.elements.flatMap(({ contacts }, i): Part[] => {
    const place = places[i]!;
    const base = `base ${place}`;
    const end = `load ${place}`;
    const contact = (job: (typeof jobs)[number], to: string): Part => ({
      id: `${job} ${place}`,
      kind: "contact",
      from: base,
      to,
      closed: contacts[job],
    });
    return [
      contact("feed", "line"),
      contact("load", end),
      contact("ground", GROUND),
      loadPart(load, place, end, coilQ, capacitorQ, line),
    ];
  });
  return { source: "line", bases: places.map((place) => `base ${place}`), parts };
}

function loadPart(
  load: ReversalLoad,
  place: string,
  from: string,
  coilQ: number,
  capacitorQ: number,
  line: Line,
): Part {
  const id = `${load.kind} ${place}`;
  switch (load.kind) {
    case "coil":
      return { id, kind: "coil", from, to: GROUND, inductance_uH: load.inductance_uH!, q: coilQ };
    case "capacitor":
      return { id, kind: "capacitor", from, to: GROUND, capacitance_pF: load.capacitance_pF!, q: capacitorQ };
    case "shorted stub":
      return { id, kind: "line", from, to: GROUND, line, length_m: load.length_m! };
    case "open stub":
      return { id, kind: "line", from, to: `end ${place}`, line, length_m: load.length_m! };
  }
}
