import type { Turn } from "./calmly.ts";

/** The parts of the page whose figures follow at a pace take turns: no two of them change in one frame of a drag. */
export const figuresTurn: Turn = { changedAt_ms: Number.NEGATIVE_INFINITY };
