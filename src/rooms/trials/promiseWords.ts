import type { TrialKind } from "../../store/trials/TrialRun.ts";

interface Promised {
  readonly what: string;
  /** About how long it takes on two cores; the full answer for some sixteen radials each. */
  readonly quick: string;
  readonly full: string;
}

const promised: Readonly<Record<TrialKind, Promised>> = {
  pace: {
    what: "Gain, front to back and feed impedance, drawn for every spacing between these two",
    quick: "a second",
    full: "a few seconds",
  },
  map: {
    what: "A map of one figure over spacing and the reflector’s length, with the best place of each marked",
    quick: "a second",
    full: "ten seconds",
  },
  best: {
    what: "The designs within these bounds that none betters in all you weigh, each solved, to be tried with a press",
    quick: "five seconds",
    full: "twenty seconds",
  },
  radials: {
    what: "What this wire gains as few long radials or many short ones, and where more of it stops to pay",
    quick: "a second",
    full: "ten seconds",
  },
  band: {
    what: "Gain, front to back and SWR drawn across the band, and how wide each stays good",
    quick: "a second",
    full: "a few seconds",
  },
  tolerance: {
    what: "What each of these errors costs by itself, and where 90 of 100 antennas built with all of them come out",
    quick: "two seconds",
    full: "ten seconds",
  },
};

/** What will come of a trial and about how long it takes, before anything has been worked out. */
export function promiseWords(kind: TrialKind, hasTwoModels: boolean): string {
  const { what, quick, full } = promised[kind];
  if (!hasTwoModels) return `${what}; takes about ${quick}.`;
  return `${what}; a quick preview in about ${quick}, the full answer in about ${full}, longer with many radials.`;
}
