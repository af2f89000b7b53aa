import { type TrialAsk, trialOf } from "../../../engine/index.ts";
import { leadTrials, type TrialLeader } from "./leadTrials.ts";
import { portHand } from "./portHand.ts";
import { solveFor } from "./solveFor.ts";
import type { LeadMessage, SolveMessage, TrialReport } from "./TrialMessage.ts";

/**
 * What a worker does with the messages of trials: it leads, or it solves for one that leads. Apart from the worker, so
 * that the same code can run beside a test.
 */
export function trialRole(
  report: (message: TrialReport) => void,
  ready?: (asks: readonly TrialAsk[]) => Promise<void> | undefined,
): (message: LeadMessage | SolveMessage) => void {
  let leader: TrialLeader | null = null;
  return (message) => {
    if ("solveFor" in message) return solveFor(message.solveFor, ready);
    leader ??= leadTrials(report, trialOf);
    switch (message.lead) {
      case "hand":
        return leader.addHand(message.hand, portHand(message.port));
      case "lose":
        return leader.loseHand(message.hand);
      case "run":
        return leader.run(message.run, message.request);
      case "stop":
        return leader.stop();
    }
  };
}
