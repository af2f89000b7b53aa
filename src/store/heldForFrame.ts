import type { Writable } from "./followPlan.ts";

/** Runs something just before the next picture is drawn. */
export type NextFrame = (work: () => void) => void;

/** As the browser has it; where there are no pictures, at once. */
export const nextFrame: NextFrame = (work) => {
  if (typeof requestAnimationFrame === "function") requestAnimationFrame(work);
  else work();
};

export interface Held<T> extends Writable<T> {
  /** Does some work, and hands on at its end all that is held, what the work has set and what was held before. */
  together(work: () => void): void;
}

/**
 * Writes to `store` once a frame: what is set in between is held and shows in `getState` here, and goes to the store
 * with the next frame, or with `together` if that is sooner. An answer that comes between two frames cannot be seen
 * before the second; handed on together with what else changes for that one, it is drawn with it in one go.
 */
export function heldForFrame<T extends object>(store: Writable<T>, later: NextFrame): Held<T> {
  let held: Partial<T> | null = null;
  let isDue = false;
  let isTogether = false;
  const flush = () => {
    const part = held;
    held = null;
    if (part) store.setState(part);
  };
  return {
    getState: () => (held ? { ...store.getState(), ...held } : store.getState()),
    setState(part) {
      held = { ...held, ...part };
      if (isDue || isTogether) return;
      isDue = true;
      later(() => {
        isDue = false;
        flush();
      });
    },
    together(work) {
      isTogether = true;
      try {
        work();
      } finally {
        isTogether = false;
        flush();
      }
    },
  };
}
