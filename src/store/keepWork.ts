import type { SavedPlan } from "../../engine/index.ts";
import { writePlanFile } from "../../engine/index.ts";
import { keptNames } from "./keptNames.ts";
import type { Shelf } from "./shelf.ts";

/** Short enough that a crash costs nothing anyone remembers typing, long enough to sit out a drag. */
const pause_ms = 300;

interface Plans {
  getState(): { readonly plan: SavedPlan };
  subscribe(listener: (state: { readonly plan: SavedPlan }, before: { readonly plan: SavedPlan }) => void): () => void;
}

export interface WorkKeeper {
  /** Writes now what is waiting to be written: when the page is being left. */
  flush(): void;
  stop(): void;
}

/**
 * Keeps the plan on the shelf a moment after each change. `onTrouble` is told why when it cannot be kept, once until
 * it works again.
 */
export function keepWork(plans: Plans, shelf: Shelf, onTrouble: (why: string) => void): WorkKeeper {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let isTroubled = false;

  const write = () => {
    timer = null;
    const why = shelf.write(keptNames.plan, writePlanFile(plans.getState().plan));
    if (why !== null && !isTroubled) onTrouble(why);
    isTroubled = why !== null;
  };
  const stopListening = plans.subscribe((state, before) => {
    if (state.plan !== before.plan) timer ??= setTimeout(write, pause_ms);
  });
  const flush = () => {
    if (timer === null) return;
    clearTimeout(timer);
    write();
  };
  return {
    flush,
    stop() {
      flush();
      stopListening();
    },
  };
}
