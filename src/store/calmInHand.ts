import type { StoreApi } from "zustand/vanilla";
import { calmly, type Turn } from "./calmly.ts";
import { handStore } from "./handStore.ts";

/** Three times a second, as a digital meter does: what changes oftener than that is not read. */
const pace_ms = 300;
/** Three frames: no frame of a drag has the figures of two places to set besides the drawing. */
const apart_ms = 50;
const turn: Turn = { changedAt_ms: Number.NEGATIVE_INFINITY };

/**
 * A store that follows another one at once, but at a pace while something is in the person's hand: for figures beside a
 * drawing that is dragged, which leave the frames to the drawing. `isUrgent` names changes that do not wait even then.
 */
export function calmInHand<T>(
  source: Pick<StoreApi<T>, "getState" | "subscribe">,
  isUrgent: (now: T, shown: T) => boolean = () => false,
): StoreApi<T> {
  const isNow = (now: T, shown: T) => !handStore.getState().isHolding || isUrgent(now, shown);
  const calm = calmly(source, { pace_ms, apart_ms }, isNow, turn);
  handStore.subscribe(({ isHolding }) => {
    if (!isHolding) calm.setState(source.getState(), true);
  });
  return calm;
}
