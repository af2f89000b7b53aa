import { createStore } from "zustand/vanilla";

/** Whether something of the plan is in the person's hand, being dragged. */
export const handStore = createStore(() => ({ isHolding: false }));
