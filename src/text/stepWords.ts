import type { ExpectedStepKind } from "../../engine/index.ts";

interface StepWords {
  readonly title: string;
  /** What to do, one line each. */
  readonly todo: readonly string[];
}

/** The measuring procedure in words: what each step is called and what is done in it. */
export const stepWords: Readonly<Record<ExpectedStepKind, StepWords>> = {
  "fit-long": {
    title: "Lay the radials, stand both wires up long",
    todo: [
      "Lay and join the radials of every element first: each changes what the others read.",
      "Put the wires up at the lengths given here, longer than planned: a wire is shortened with cutters and lengthened with a soldering iron.",
      "Put the common-mode choke at the fed base before the first reading; the outside of the cable would be read with the antenna.",
    ],
  },
  "first-driven-alone": {
    title: "First reading: driven alone",
    todo: [
      "Open every other base with a gap right at the base. A wire hanging from it, or a relay on a long lead, is not a gap.",
      "Sweep about five percent to either side and write down: where X passes through 0, R there, where the SWR is least, and R and X at the plan’s frequency.",
    ],
  },
  "trim-driven": {
    title: "Trim the driven, still alone",
    todo: [
      "Cut only the first half of what the sum says, read again, and let your own two readings say what the rest should be.",
      "Stop when X passes through 0 where it is expected here.",
    ],
  },
  "ground-loss": {
    title: "What the ground takes",
    todo: [
      "R at X = 0, less what it would be over perfect ground (about 36 Ω), is a hint of what the ground takes. It is an estimate: trust how it moves from one day or one radial to the next more than its size.",
      "If you can, add a few radials and read again. While R still falls, they are worth their wire; when four more change it by less than an ohm, stop.",
    ],
  },
  "first-reflector-alone": {
    title: "First reading: reflector alone",
    todo: [
      "Take the meter to the reflector’s base, calibrate there, and open the driven’s base.",
      "Read as you did at the driven. Elements over like ground read alike in R.",
    ],
  },
  "trim-reflector": {
    title: "Trim the reflector, still alone",
    todo: [
      "Cut the first half, read again, go on by your own slope.",
      "Stay on the long side: a reflector that is a little long loses little, one that is a little short turns the beam round.",
    ],
  },
  "reflector-joined": {
    title: "Driven again, reflector connected",
    todo: [
      "Take the meter back to the driven. Join the reflector to its radials, or put its load in, as the plan says.",
      "Read again before you cut anything. R and X move because the two elements now act on each other.",
    ],
  },
  mutual: {
    title: "What the elements do to each other",
    todo: [
      "Nothing is connected here. From the three readings at the plan’s frequency the page works out the mutual impedance of the two bases.",
      "Open the part “Correction” and look whether it is near what is expected.",
    ],
  },
  retrim: {
    title: "Retrim the driven",
    todo: [
      "With the reflector active the driven is a little long. Cut it until X passes through 0 at the plan’s frequency; leave it shorter only where a match asks for that.",
      "Do not touch the reflector here.",
    ],
  },
  "on-air-trim": {
    title: "If you like: the last centimetre by ear",
    todo: [
      "Ask for a steady, vertically polarised signal from straight behind, two wavelengths away or more.",
      "Make the reflector a little longer and a little shorter and look for the dip. It is shallow and one-sided; of two equal readings take the longer wire. Then retrim the driven once more.",
      "Whoever sends stops while you touch a wire.",
    ],
  },
  reversed: {
    title: "The other way round",
    todo: [
      "Change over: feed the element behind, and give the one ahead what the other had.",
      "Read as in the steps before. Two directions of one array should agree; if they do not, one of the two grounds or something nearby differs.",
    ],
  },
  record: {
    title: "Write it down",
    todo: [
      "Final lengths, count of radials, taps of coils, a sweep in each switch position, a sketch, a photograph.",
      "Enter them in the log. Whoever looks for a fault in two years looks here first.",
    ],
  },
  prove: {
    title: "Prove it on the air",
    todo: [
      "Fill the sheet of pairs: one reading forward, one reversed, close together in time, many times over.",
      "The part “On air” gives the middle value and how sure it is.",
    ],
  },
  recheck: {
    title: "Look again after rain and in frost",
    todo: [
      "Open the reflector’s base, read the driven alone, and enter it in the log with the state of the ground; so it can be held against the first readings.",
      "Ground that dries or freezes moves R and resonance; a wire that broke moves them further.",
    ],
  },
};

/** What holds before any step. */
export const beforeWords: readonly string[] = [
  "No thunder about, no storm on its way. No transmitter connected, and nobody who could connect one; tell the others.",
  "Look up: nothing you raise, lower or let fall can come near a power line.",
  "Measure at the base, through the shortest lead there is, and calibrate there: open, short, load. If a cable must stay between, tell the page its kind and length.",
  "Choke fitted. Date, state of the ground and weather noted.",
  "A strong broadcast station nearby upsets simple meters: if readings jump, measure in another hour or with a narrower instrument.",
];
