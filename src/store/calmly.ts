import { createStore, type StoreApi } from "zustand/vanilla";

/**
 * A store that follows another one, but changes at most once in `pace_ms`: at once after a rest, and in the end always
 * to the last state. `isUrgent(now, shown)` names changes that do not wait.
 */
export function calmly<T>(
  source: Pick<StoreApi<T>, "getState" | "subscribe">,
  pace_ms: number,
  isUrgent: (now: T, shown: T) => boolean,
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
  source.subscribe((now) => {
    const wait_ms = changedAt_ms + pace_ms - Date.now();
    if (wait_ms <= 0 || isUrgent(now, calm.getState())) take();
    else later ??= setTimeout(take, wait_ms);
  });
  return calm;
}
