import { createStore, type StoreApi } from "zustand/vanilla";

/** Kept by several stores together that take turns: when the last of them changed. */
export interface Turn {
  changedAt_ms: number;
}

interface Paces {
  /** A store changes at most once in this time, which may be another each time. */
  pace_ms(): number;
  /** After any other of those that take turns, it waits this long. */
  readonly apart_ms: number;
}

/**
 * A store that follows another one, but changes at most once in a pace: at once after a rest, and in the end always
 * to the last state. Stores that share a `turn` do not change together but one after the other. `isUrgent(now, shown)`
 * names changes that wait for neither.
 */
export function calmly<T>(
  source: Pick<StoreApi<T>, "getState" | "subscribe">,
  { pace_ms, apart_ms }: Paces,
  isUrgent: (now: T, shown: T) => boolean,
  turn: Turn = { changedAt_ms: Number.NEGATIVE_INFINITY },
): StoreApi<T> {
  const calm = createStore<T>(() => source.getState());
  let changedAt_ms = Number.NEGATIVE_INFINITY;
  let later: ReturnType<typeof setTimeout> | undefined;
  const take = () => {
    clearTimeout(later);
    later = undefined;
    changedAt_ms = Date.now();
    calm.setState(source.getState(), true);
  };
  const takeTurn = () => {
    later = undefined;
    const wait_ms = Math.max(changedAt_ms + pace_ms(), turn.changedAt_ms + apart_ms) - Date.now();
    if (wait_ms > 0) {
      later = setTimeout(takeTurn, wait_ms);
      return;
    }
    turn.changedAt_ms = Date.now();
    take();
  };
  source.subscribe((now) => {
    if (isUrgent(now, calm.getState())) take();
    else if (later === undefined) takeTurn();
  });
  return calm;
}
