import { calmAnswerHook } from "../../store/calmAnswerHook.ts";

/** The answer as the ladder's figures follow it: see `calmAnswerHook`. */
export const useLadderAnswer = calmAnswerHook();
