import { type TrialAsk, trialOf } from "../../../engine/index.ts";
import { leadTrials, type TrialLeader } from "./leadTrials.ts";
import { portHand } from "./portHand.ts";
import { solveFor } from "./solveFor.ts";
import type { LeadMessage, SolveMessage, TrialReport, WarmMessage } from "./TrialMessage.ts";
import { warmUp } from "./warmUp.ts";

/**
 * What a worker does with the messages of trials: it leads, or it solves for one that leads. Apart from the worker, so
 * that the same code can run beside a test.
 */
export function trialRole(
  report: (message: TrialReport) => void,
  ready?: (asks: readonly TrialAsk[]) => Promise<void> | undefined,
): (message: LeadMessage | SolveMessage | WarmMessage) => void {
  let leader: TrialLeader | null = null;
  /** It has been asked for something, and warms no more. */
  let isAsked = false;
  const warm = async (message: WarmMessage) => {
    const steps = warmUp(message, ready);
    while (!isAsked && !(await steps.next()).done)
      // A message that waits is let in.
      await new Promise((done) => setTimeout(done, 0));
  };
  return (message) => {
    if ("warm" in message)
      // What goes wrong here goes wrong again, and is told of, where it counts.
      return void warm(message).catch(() => {});
    if ("solveFor" in message)
      return solveFor(message.solveFor, (asks) => {
        isAsked = true;
        return ready?.(asks);
      });
    leader ??= leadTrials(report, trialOf);
    switch (message.lead) {
      case "hand":
        return leader.addHand(message.hand, portHand(message.port));
      case "lose":
        return leader.loseHand(message.hand);
      case "run":
        isAsked = true;
        return leader.run(message.run, message.request);
      case "stop":
        return leader.stop();
    }
  };
}
