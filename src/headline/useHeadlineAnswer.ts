import { calmAnswerHook } from "../store/calmAnswerHook.ts";

/** The answer as the headline follows it: see `calmAnswerHook`. */
export const useHeadlineAnswer = calmAnswerHook(true);
