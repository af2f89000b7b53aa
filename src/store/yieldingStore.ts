import { createStore, type StoreApi } from "zustand/vanilla";
import { handStore } from "./handStore.ts";
import { shortageStore } from "./shortageStore.ts";

/** Longer than two frames: nothing has come that would have brought the last state along. */
const patience_ms = 50;

/**
 * A store that follows another one at once, but where frames are short passes over every second change while something
 * is in the hand: for a drawing beside the one that is watched. In the end always the last state.
 */
export function yieldingStore<T>(source: Pick<StoreApi<T>, "getState" | "subscribe">): StoreApi<T> {
  const follower = createStore<T>(() => source.getState());
  let isBehind = false;
  let later: ReturnType<typeof setTimeout> | undefined;
  const take = () => {
    clearTimeout(later);
    isBehind = false;
    follower.setState(source.getState(), true);
  };
  source.subscribe(() => {
    if (isBehind || !handStore.getState().isHolding || !shortageStore.getState().isShort) return take();
    isBehind = true;
    later = setTimeout(take, patience_ms);
  });
  handStore.subscribe(({ isHolding }) => {
    if (!isHolding && isBehind) take();
  });
  return follower;
}
