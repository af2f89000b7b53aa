import type { Problem, SavedPlan } from "../../engine/index.ts";
import type { Answer } from "../store/Answer.ts";
import { answerModels, isOverSoil } from "../store/answerModels.ts";
import type { IconName } from "../ui/Icon.tsx";

export interface AnswerLabel {
  readonly kind: "full" | "coming" | "preview" | "old";
  readonly icon: IconName;
  readonly text: string;
}

type Facts = Pick<Answer, "state" | "model" | "refining" | "isStopped" | "previewOnly" | "readout" | "fault">;

/** What the shown figures are, in a few words. Null where no soil has a say: then there is nothing to tell apart. */
export function answerLabel(plan: SavedPlan, isGood: boolean, facts: Facts): AnswerLabel | null {
  if (!isOverSoil(plan)) return null;
  const { state, model, refining, isStopped, previewOnly, readout, fault } = facts;
  if (!isGood || fault !== null || (state === "old" && refining === null))
    return {
      kind: "old",
      icon: "earlier",
      text: model === "full-wave" ? "earlier full-wave answer" : "earlier quick preview",
    };
  const { best } = answerModels(plan);
  if (best[0] === "full-wave" && previewOnly.length === 0) {
    // In a drag that full answers keep pace with, the one shown is a frame behind, and no preview is on the page.
    const isKeptUp = state === "working" && refining === null && readout !== null && !isStopped;
    if ((state === "fresh" || isKeptUp) && model === "full-wave")
      return { kind: "full", icon: "check", text: "full-wave answer" };
    if (isStopped && state === "fresh")
      return { kind: "preview", icon: "info", text: "quick preview, full answer stopped" };
    const steps = refining && refining.done > 0 ? `, ${refining.done} of ${refining.total} done` : "";
    const part = refining?.part ? `, ${Math.round(100 * refining.part)} %` : "";
    const soFar = steps + part;
    const now = best.includes("preview") ? "quick preview" : readout ? "earlier answer" : "no preview";
    return { kind: "coming", icon: "wait", text: `${now}, full answer coming${soFar}` };
  }
  return { kind: "preview", icon: "info", text: `quick preview only${inBrackets(previewOnly)}` };
}

function inBrackets(problems: readonly Problem[]): string {
  const [first] = problems;
  if (!first) return "";
  return first.code === "base-without-radials" ? " (a base without radials)" : " (see why)";
}
