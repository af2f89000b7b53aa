import { useCallback, useMemo } from "react";
import type { SavedPlan } from "../../../engine/index.ts";
import type { PictureOf, TrialKind, TrialRun } from "../../store/trials/TrialRun.ts";
import { trialKey, trialStages } from "../../store/trials/trialStages.ts";
import { trialChoicesStore, useTrialChoices } from "../../store/trials/useTrialChoices.ts";
import { trials, useTrials } from "../../store/trials/useTrials.ts";
import { planStore, usePlan } from "../../store/usePlan.ts";

export interface ShownTrial<K extends TrialKind> {
  readonly kind: K;
  readonly run: TrialRun | undefined;
  readonly picture: PictureOf<K> | null;
  /** It was asked of the plan and with the choices on screen; true where there is none. */
  readonly isCurrent: boolean;
  /** For the plan on screen. */
  readonly start: () => void;
  readonly stop: () => void;
  readonly goOn: () => void;
}

/** The trial of one kind: what is shown, whether it is of the plan on screen, and what can be done with it. */
export function useTrial<K extends TrialKind>(kind: K): ShownTrial<K> {
  const run = useTrials((s) => s.runs[kind]);
  const plan = usePlan((s) => s.plan);
  const choices = useTrialChoices((s) => s);
  const isCurrent = useMemo(
    () => run === undefined || trialKey(kind, plan, choices, run.plan) === run.key,
    [kind, plan, choices, run],
  );
  const start = useCallback(() => startTrial(kind, planStore.getState().plan), [kind]);
  const goOn = useCallback(() => trials.goOn(kind), [kind]);
  return {
    kind,
    run,
    picture: (run?.picture as PictureOf<K> | undefined) ?? null,
    isCurrent,
    start,
    stop: trials.stop,
    goOn,
  };
}

function startTrial(kind: TrialKind, plan: SavedPlan): void {
  const choices = trialChoicesStore.getState();
  trials.start(kind, plan, trialKey(kind, plan, choices, plan), trialStages(kind, plan, choices));
}
