import { createStore } from "zustand/vanilla";
import { frameShortage } from "./frameShortage.ts";
import { handStore } from "./handStore.ts";

/**
 * Whether frames are missing where something is being dragged: what need not follow at once then leaves more of them to
 * what does. Watched while something is in the hand; it holds until the next drag shows otherwise.
 */
export const shortageStore = createStore(() => ({ isShort: false }));

const watch = frameShortage();
let isWatching = false;
const frame = (now_ms: number) => {
  isWatching = handStore.getState().isHolding;
  if (!isWatching) return watch.pause();
  const isShort = watch.frame(now_ms);
  if (isShort !== shortageStore.getState().isShort) shortageStore.setState({ isShort });
  requestAnimationFrame(frame);
};
handStore.subscribe(({ isHolding }) => {
  if (!isHolding || isWatching || typeof requestAnimationFrame !== "function") return;
  isWatching = true;
  requestAnimationFrame(frame);
});
