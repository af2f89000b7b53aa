import { useEffect, useMemo } from "react";
import type { SavedPlan } from "../../../engine/index.ts";
import { handStore } from "../../store/handStore.ts";
import { planStore } from "../../store/usePlan.ts";
import { planProblem } from "./planProblem.ts";

export type PlanChange = (plan: SavedPlan) => SavedPlan;

export interface YardEdits {
  /** Carries a change out, or says why not. `mergeKey`: see the plan store. */
  readonly change: (change: PlanChange, label: string, mergeKey?: string) => void;
  /** What a change would break, for a field to say under itself. */
  readonly objection: (change: PlanChange) => string | null;
  readonly settle: () => void;
  readonly beginDrag: () => void;
  readonly endDrag: () => void;
  readonly cancelDrag: () => void;
}

/**
 * Edits from drawings and fields. One that would make the plan unusable is not carried out, so the drawing and the
 * answer stay at the last good value; the reason goes to `onRefused`, null when there is none.
 */
export function useYardEdits(onRefused: (reason: string | null) => void): YardEdits {
  // What is in the hand goes with the drawing it was taken from.
  useEffect(() => () => handStore.setState({ isHolding: false }), []);
  return useMemo(() => makeEdits(onRefused), [onRefused]);
}

function makeEdits(onRefused: (reason: string | null) => void): YardEdits {
  let beforeDrag: SavedPlan | null = null;
  const store = () => planStore.getState();
  const objection = (change: PlanChange) => planProblem(store().plan, change(store().plan));
  const settle = () => {
    onRefused(null);
    store().sealEdit();
  };
  return {
    change: (change, label, mergeKey) => {
      const before = store().plan;
      const after = change(before);
      const reason = planProblem(before, after);
      onRefused(reason);
      if (reason === null) store().edit(() => after, label, mergeKey);
    },
    objection,
    settle,
    beginDrag: () => {
      handStore.setState({ isHolding: true });
      store().sealEdit();
      beforeDrag = store().plan;
    },
    endDrag: () => {
      beforeDrag = null;
      settle();
      handStore.setState({ isHolding: false });
    },
    cancelDrag: () => {
      // A drag is one undo step; where it moved nothing there is no step to take back.
      if (beforeDrag && store().plan !== beforeDrag) store().undo();
      beforeDrag = null;
      settle();
      handStore.setState({ isHolding: false });
    },
  };
}
