import type { BenchState, GroundState, OtherBases } from "../../engine/index.ts";

/** How the ground is called in the log, driest first. */
export const groundWords: readonly { readonly value: GroundState; readonly label: string }[] = [
  { value: "dry", label: "dry" },
  { value: "moist", label: "damp" },
  { value: "wet", label: "wet" },
  { value: "frozen", label: "frozen" },
  { value: "snow", label: "under snow" },
];

/** What was connected at the bases that were not read. */
export const othersWords: readonly { readonly value: OtherBases; readonly label: string }[] = [
  { value: "open", label: "open" },
  { value: "joined", label: "joined to its radials" },
  { value: "loaded", label: "loaded" },
  { value: "fed", label: "fed as well" },
  { value: "none", label: "there is none" },
];

/** What was connected while the meter read, in a few words. */
export const stateWords: Readonly<Record<BenchState, string>> = {
  "driven-alone": "driven alone",
  "reflector-alone": "reflector alone",
  "reflector-joined": "driven, reflector connected",
  reversed: "reversed",
};

export const wordFor = <T extends string>(words: readonly { readonly value: T; readonly label: string }[], value: T) =>
  words.find((one) => one.value === value)?.label ?? value;
