import { calmAnswerHook } from "../../store/calmAnswerHook.ts";

/** The answer as the ladder follows it: see `calmAnswerHook`. */
export const useLadderAnswer = calmAnswerHook();
