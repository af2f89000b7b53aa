import type { PlanChange, YardEdits } from "./useYardEdits.ts";

export interface FieldHand {
  readonly check: (value: number) => string | null;
  readonly onCommit: (value: number, stepped: boolean) => void;
}

/** What a field needs to hand a value to the plan. A run of steps with the same `key` is one undo step. */
export function fieldHand(
  edits: YardEdits,
  change: (value: number) => PlanChange,
  label: string,
  key: string,
): FieldHand {
  return {
    check: (value) => edits.objection(change(value)),
    onCommit: (value, stepped) => edits.change(change(value), label, stepped ? key : undefined),
  };
}
