import type { SavedPlan } from "../../engine/index.ts";
import { keptNames } from "./keptNames.ts";
import { readKeptPlan } from "./readKeptPlan.ts";
import type { Shelf } from "./shelf.ts";

export interface Restored {
  /** Null on a first visit, and when what was kept cannot be read. */
  readonly plan: SavedPlan | null;
  /** What this page cannot read: a newer page's plan, or damage. */
  readonly unreadable: { readonly text: string; readonly why: string } | null;
  /** False when the unreadable text could not be put aside: then autosave must not write over it. */
  readonly mayKeep: boolean;
}

/** What was kept on the last visit. What cannot be read is put aside under a key that nothing writes over. */
export function restoreWork(shelf: Shelf): Restored {
  const kept = readKeptPlan(shelf.read(keptNames.plan));
  if (kept.kind === "none") return { plan: null, unreadable: null, mayKeep: true };
  if (kept.kind === "plan") return { plan: kept.plan, unreadable: null, mayKeep: true };
  const { text, problems } = kept;
  const refused = shelf.write(freeName(shelf, text), text);
  return { plan: null, unreadable: { text, why: problems[0]?.message ?? "" }, mayKeep: refused === null };
}

/** "aside", "aside-2", …: the first that is free or already holds this very text. */
function freeName(shelf: Shelf, text: string): string {
  for (let number = 1; ; number++) {
    const name = number === 1 ? keptNames.aside : `${keptNames.aside}-${number}`;
    const held = shelf.read(name);
    if (held === null || held === text) return name;
  }
}
