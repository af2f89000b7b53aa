import type { Hand } from "./Hand.ts";
import type { AskBatch, BatchReply } from "./TrialMessage.ts";

/** A hand at the other end of a port: samples go from worker to worker and never through the page's thread. */
export function portHand(port: MessagePort): Hand {
  const waiting = new Map<number, (reply: BatchReply) => void>();
  let last = 0;
  port.onmessage = ({ data }: MessageEvent<BatchReply>) => {
    const done = waiting.get(data.batch);
    waiting.delete(data.batch);
    done?.(data);
  };
  return {
    ask(asks, done) {
      const batch: AskBatch = { batch: ++last, asks };
      waiting.set(batch.batch, done);
      port.postMessage(batch);
    },
    close() {
      waiting.clear();
      port.close();
    },
  };
}
