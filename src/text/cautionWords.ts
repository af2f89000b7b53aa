/** Figures that the cautions name for one plan. */
export interface CautionFigures {
  /** Tallest upright with its base, as the page writes lengths. */
  readonly tallest: string;
  /** One and a half times that. */
  readonly lineDistance: string;
  /** The height and a metre. */
  readonly fallRadius: string;
  /** Half and three quarters of the height. */
  readonly guysFrom: string;
  readonly guysTo: string;
  /** From a base to the furthest end of its radials. */
  readonly radialReach: string;
}

export interface Caution {
  readonly title: string;
  readonly lines: readonly string[];
}

/** What has to be read before anything is dug, raised or fed. Local codes and licensed practice come before all of it. */
export function cautionWords(f: CautionFigures): readonly Caution[] {
  return [
    {
      title: "Power lines",
      lines: [
        `Check that nothing, standing, going up, coming down or falling, can touch a line or come within 3 m (10 ft) of one. Common advice is a distance of at least one and a half times the height: ${f.lineDistance} from each mast here.`,
        "Look again on the day, wires to houses among them. If it starts to fall toward a line, let go and stay away.",
      ],
    },
    {
      title: "Raising, standing, falling",
      lines: [
        `Two people or more, calm weather, no ladder on a slope. Keep paths, neighbours and playing children out of ${f.fallRadius} round each mast: its height, ${f.tallest}, and a metre.`,
        `Guys that do not conduct, or are broken by insulators; anchors ${f.guysFrom} to ${f.guysTo} from the mast. Check them again after the first wind.`,
      ],
    },
    {
      title: "Digging and stakes",
      lines: [
        "Ask whoever keeps the records of pipes and cables before anything is driven or slotted into the ground. Check for the house’s own: garden lighting, drains, a pump’s cable.",
      ],
    },
    {
      title: "Radials, feet and mowers",
      lines: [
        `Radials reach ${f.radialReach} from each base. Pin them flat or lay them under the turf, mark where they end, tell whoever mows. Their ends carry voltage too.`,
      ],
    },
    {
      title: "RF burns",
      lines: [
        "Bases, coils, tips and ends burn at modest power, the unfed wire’s as well. Put a guard that does not conduct round each base; about 1.2 m (4 ft) is one maker’s advice.",
        "Nobody adjusts anything while a transmitter could be keyed. Whoever works at the antenna has the microphone plug in the pocket.",
      ],
    },
    {
      title: "Lightning and bonding",
      lines: [
        "Bond the bases, the cable’s entry, its arrester and any mast to the building’s earth as the local code says; ask a licensed electrician where the law wants one.",
        "A drain choke or a coil across the base leads static away; it does not protect from a stroke. Disconnect outdoors and ground the feed when storms are forecast; open nothing while one is near.",
      ],
    },
    {
      title: "Exposure to radio fields",
      lines: [
        "Many licences ask for an assessment before you operate. This page makes none. Ask your authority which rules and limits hold for you, check the distance people can come to every wire, not to the fed one only, and keep the record.",
      ],
    },
    {
      title: "Permission and neighbours",
      lines: [
        "Ask about masts, covenants and boundaries before you buy. Tell the neighbours what is going up; a choke and a clean signal keep the peace.",
      ],
    },
  ];
}
