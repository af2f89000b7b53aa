import { useMemo, useRef } from "react";
import type { SavedPlan } from "../../../engine/index.ts";
import { planStore, usePlan } from "../../store/usePlan.ts";
import { planProblem } from "./planProblem.ts";

export type PlanChange = (plan: SavedPlan) => SavedPlan;

/**
 * Edits from drawings and fields. One that would make the plan unusable is not carried out, so the drawing and the
 * answer stay at the last good value; the reason goes to `onRefused`.
 */
export function useYardEdits(onRefused: (reason: string | null) => void) {
  const edit = usePlan((s) => s.edit);
  const sealEdit = usePlan((s) => s.sealEdit);
  const beforeDrag = useRef<SavedPlan | null>(null);

  return useMemo(
    () => ({
      /** Carries a change out, or says why not. `mergeKey`: see the plan store. */
      change(change: PlanChange, label: string, mergeKey?: string) {
        const plan = planStore.getState().plan;
        const reason = planProblem(plan, change(plan));
        onRefused(reason);
        if (reason === null) edit(change, label, mergeKey);
      },
      /** What a change would break, for a field to say under itself. */
      objection(change: PlanChange): string | null {
        const plan = planStore.getState().plan;
        return planProblem(plan, change(plan));
      },
      settle() {
        onRefused(null);
        sealEdit();
      },
      beginDrag() {
        sealEdit();
        beforeDrag.current = planStore.getState().plan;
      },
      endDrag() {
        beforeDrag.current = null;
        onRefused(null);
        sealEdit();
      },
      cancelDrag() {
        const before = beforeDrag.current;
        beforeDrag.current = null;
        onRefused(null);
        // A drag is one undo step; where it moved nothing there is no step to take back.
        if (before && planStore.getState().plan !== before) planStore.getState().undo();
        sealEdit();
      },
    }),
    [edit, sealEdit, onRefused],
  );
}

export type YardEdits = ReturnType<typeof useYardEdits>;
