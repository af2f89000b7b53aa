import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { pageShelf } from "../shelf.ts";
import { readTrialChoices } from "./readTrialChoices.ts";
import type { TrialChoices } from "./TrialChoices.ts";

const name = "trials";

export const trialChoicesStore = createStore<TrialChoices>(() => readTrialChoices(pageShelf.read(name)));
// A choice that cannot be kept still holds for this visit.
trialChoicesStore.subscribe((choices) => void pageShelf.write(name, JSON.stringify(choices)));

/** Reads what is set in the room of trials; changed by `chooseTrial`. */
export function useTrialChoices<T>(select: (state: TrialChoices) => T): T {
  return useStore(trialChoicesStore, select);
}

/** Changes one part of what is set for one kind of trial. */
export function chooseTrial<K extends Exclude<keyof TrialChoices, "arrival">>(
  kind: K,
  part: Partial<TrialChoices[K]>,
): void {
  trialChoicesStore.setState((state) => ({ [kind]: { ...state[kind], ...part } }) as Partial<TrialChoices>);
}
