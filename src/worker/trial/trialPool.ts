import type { TrialRequest } from "../../../engine/index.ts";
import type { TrialReport } from "./TrialMessage.ts";
import type { MakeTrialWorker, TrialWorker } from "./TrialWorker.ts";

/** A worker still solving this long after a stop is ended: what it would find is not worth the wait. */
export const patience_ms = 400;
/** A leader that has not said a word this long after a stop is ended too, and with it what it knew. */
export const leaderPatience_ms = 4000;
/** Workers that have had nothing to do for this long are ended: each holds its tables. */
export const idle_ms = 120_000;

export interface TrialPool {
  /** Starts a trial in the place of the one that runs; `run` tells its reports from those of others. */
  run(run: number, request: TrialRequest): void;
  /** Starts the workers ahead of the first `run`, and has them come up to speed on what it may ask (`warmUp`). */
  warm(requests: readonly TrialRequest[]): void;
  stop(): void;
  /** Ends every worker. The next `run` starts others, which know nothing. */
  end(): void;
  /** Workers that are alive, the leader among them. */
  readonly alive: number;
}

/** Two at least, so that a trial is quicker than one worker; four at most, for each holds its own tables. The page's own thread and the leader are mostly at rest. */
export function handsFor(processors: number | undefined): number {
  return Math.max(2, Math.min(4, processors ?? 2));
}

/**
 * One worker that leads a trial and a few that solve for it, started with the first trial. They speak to each other
 * through ports; the page's thread sees progress and pictures only.
 *
 * @param onFault told in words for the person when a worker cannot start or breaks; all are then ended
 */
export function trialPool(
  makeWorker: MakeTrialWorker,
  handCount: number,
  onReport: (report: TrialReport) => void,
  onFault: (message: string) => void,
): TrialPool {
  let leader: TrialWorker | null = null;
  const hands = new Map<number, TrialWorker>();
  let lastHand = 0;
  let patience: ReturnType<typeof setTimeout> | undefined;
  let leaderPatience: ReturnType<typeof setTimeout> | undefined;
  let idleness: ReturnType<typeof setTimeout> | undefined;

  const end = () => {
    for (const timer of [patience, leaderPatience, idleness]) clearTimeout(timer);
    for (const hand of hands.values()) hand.terminate();
    hands.clear();
    leader?.terminate();
    leader = null;
  };
  const giveUp = (message: string) => {
    end();
    onFault(message);
  };
  const watched = (worker: TrialWorker): TrialWorker => {
    worker.onerror = (event) => {
      if (worker === leader || [...hands.values()].includes(worker))
        giveUp(event.message || "this browser did not start the background worker");
    };
    return worker;
  };

  const dismissHands = () => {
    for (const [id, hand] of hands) {
      hand.terminate();
      leader?.postMessage({ lead: "lose", hand: id }, []);
    }
    hands.clear();
  };
  const startHands = (warm: readonly TrialRequest[] | undefined) => {
    while (hands.size < handCount && leader) {
      const hand = watched(makeWorker());
      const id = ++lastHand;
      hands.set(id, hand);
      const { port1, port2 } = new MessageChannel();
      hand.postMessage({ solveFor: port1 }, [port1]);
      leader.postMessage({ lead: "hand", hand: id, port: port2 }, [port2]);
      if (warm) hand.postMessage({ warm, as: "solves" }, []);
    }
  };
  const start = (warm?: readonly TrialRequest[]) => {
    if (!leader) {
      const started = watched(makeWorker());
      started.onmessage = ({ data }) => {
        if (leader !== started) return;
        clearTimeout(leaderPatience);
        if (data.busy === 0 && data.kind !== "going") {
          clearTimeout(patience);
          idleness = restarted(idleness, dismissHands, idle_ms);
        }
        onReport(data);
      };
      leader = started;
      if (warm) started.postMessage({ warm, as: "leads" }, []);
    }
    startHands(warm);
  };

  return {
    warm(requests) {
      if (hands.size > 0) return;
      try {
        start(requests);
      } catch {
        // The first run tries again, and says what is wrong.
        return end();
      }
      idleness = restarted(idleness, dismissHands, idle_ms);
    },
    run(run, request) {
      for (const timer of [patience, leaderPatience, idleness]) clearTimeout(timer);
      try {
        start();
      } catch (error) {
        return giveUp(error instanceof Error ? error.message : String(error));
      }
      leader?.postMessage({ lead: "run", run, request }, []);
    },
    stop() {
      if (!leader) return;
      leader.postMessage({ lead: "stop" }, []);
      patience = restarted(patience, dismissHands, patience_ms);
      const giveUpLeader = () => {
        end();
        onReport({ run: 0, kind: "stopped", busy: 0 });
      };
      leaderPatience = restarted(leaderPatience, giveUpLeader, leaderPatience_ms);
    },
    end,
    get alive() {
      return hands.size + (leader ? 1 : 0);
    },
  };
}

function restarted(timer: ReturnType<typeof setTimeout> | undefined, act: () => void, after_ms: number) {
  clearTimeout(timer);
  return setTimeout(act, after_ms);
}
