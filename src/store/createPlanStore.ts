import { createStore } from "zustand/vanilla";
import type { SavedPlan } from "../../engine/index.ts";

import type { PlanHistory } from "./PlanHistory.ts";
import { verdictOf } from "./verdictOf.ts";

interface Step {
  readonly plan: SavedPlan;
  readonly label: string;
}

/** Two hundred steps of a plan are well under a megabyte, since steps share what did not change. */
export const longestHistory = 200;

/** A plan with undo and redo. No rule of physics here: edits and checks are the engine's. */
export function createPlanStore(initial: SavedPlan) {
  return createStore<PlanHistory>((set, get) => {
    let past: readonly Step[] = [];
    let future: readonly Step[] = [];
    let openKey: string | null = null;

    const show = (plan: SavedPlan) =>
      set({
        plan,
        verdict: verdictOf(plan),
        canUndo: past.length > 0,
        canRedo: future.length > 0,
        undoLabel: past.at(-1)?.label ?? null,
        redoLabel: future.at(-1)?.label ?? null,
      });

    const step = (plan: SavedPlan, label: string) => {
      past = [...past.slice(1 - longestHistory), { plan: get().plan, label }];
      future = [];
      show(plan);
    };

    return {
      plan: initial,
      verdict: verdictOf(initial),
      canUndo: false,
      canRedo: false,
      undoLabel: null,
      redoLabel: null,

      edit(change, label, mergeKey) {
        const plan = change(get().plan);
        if (plan === get().plan) return;
        // A key is open only straight after an edit: there is nothing to redo that a merged edit would have to drop.
        if (mergeKey !== undefined && mergeKey === openKey) show(plan);
        else step(plan, label);
        openKey = mergeKey ?? null;
      },

      sealEdit() {
        openKey = null;
      },

      undo() {
        const back = past.at(-1);
        if (!back) return;
        openKey = null;
        past = past.slice(0, -1);
        future = [...future, { plan: get().plan, label: back.label }];
        show(back.plan);
      },

      redo() {
        const ahead = future.at(-1);
        if (!ahead) return;
        openKey = null;
        future = future.slice(0, -1);
        past = [...past, { plan: get().plan, label: ahead.label }];
        show(ahead.plan);
      },

      open(plan, label = "open another plan") {
        openKey = null;
        step(plan, label);
      },

      start(plan) {
        openKey = null;
        past = [];
        future = [];
        show(plan);
      },
    };
  });
}
