import type { StoreApi } from "zustand/vanilla";
import { calmly, type Turn } from "./calmly.ts";
import { handStore } from "./handStore.ts";
import { shortageStore } from "./shortageStore.ts";

/** What is read as figures need not change oftener than an eye can read it, and half as often where frames are short. */
const pace_ms = () => (shortageStore.getState().isShort ? 500 : 250);
/** Three frames: those that take turns do not set their figures in one frame of a drag. */
const apart_ms = 50;

/**
 * A store that follows another one at once, but at a pace while something is in the person's hand: for figures beside a
 * drawing that is dragged, which leave the frames to the drawing. `isUrgent` names changes that do not wait even then.
 * Those that share a `turn` change one after the other.
 */
export function calmInHand<T>(
  source: Pick<StoreApi<T>, "getState" | "subscribe">,
  isUrgent: (now: T, shown: T) => boolean = () => false,
  turn?: Turn,
): StoreApi<T> {
  const isNow = (now: T, shown: T) => !handStore.getState().isHolding || isUrgent(now, shown);
  const calm = calmly(source, { pace_ms, apart_ms }, isNow, turn);
  handStore.subscribe(({ isHolding }) => {
    if (!isHolding) calm.setState(source.getState(), true);
  });
  return calm;
}
