import type { AnswerModel } from "../../store/answerModels.ts";
import { usePlan } from "../../store/usePlan.ts";

/** Which model the figures of a part come from: beside every one of them. */
export function SourceWords({ model, what }: { readonly model: AnswerModel; readonly what: string }) {
  const ground = usePlan((s) => s.plan.ground.kind);
  const asksFull = usePlan((s) => s.plan.soilModel === "full-wave");
  const words =
    ground !== "soil"
      ? `${what}: solved over ${ground === "perfect" ? "perfect ground" : "no ground"}`
      : model === "full-wave"
        ? `${what}: full-wave over this soil`
        : `${what}: quick preview of this soil${asksFull ? "; the full answer takes its place when it is there" : ""}`;
  return (
    <p className="fr-source" data-model={ground === "soil" ? model : "exact"}>
      {words}.
    </p>
  );
}
