import type { TrialAsk } from "../../../engine/index.ts";
import type { BatchReply } from "./TrialMessage.ts";

/** A worker that solves, as its leader sees it. Batches are answered in the order they were asked. */
export interface Hand {
  ask(asks: readonly TrialAsk[], done: (reply: BatchReply) => void): void;
  /** It is no more: nothing will be answered. */
  close(): void;
}
