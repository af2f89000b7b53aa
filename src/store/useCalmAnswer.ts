import { calmAnswerHook } from "./calmAnswerHook.ts";

/** The answer as the rooms' figures follow it: see `calmAnswerHook`. */
export const useCalmAnswer = calmAnswerHook();
