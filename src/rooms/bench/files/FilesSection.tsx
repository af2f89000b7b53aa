import { type ExpectedSheet, predictionFile } from "../../../../engine/index.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { stateWords } from "../../../text/benchWords.ts";
import { stepWords } from "../../../text/stepWords.ts";
import { savePlan } from "../../../topbar/planActions.ts";
import { Button } from "../../../ui/Button.tsx";
import { Icon } from "../../../ui/Icon.tsx";
import { say } from "../../../ui/say.ts";
import { Progress } from "../../feed/Progress.tsx";
import { SourceWords } from "../../feed/SourceWords.tsx";
import type { Stages } from "../../feed/useStages.ts";
import { today } from "../today.ts";
import { AnswerFiles } from "./AnswerFiles.tsx";
import { SiteFiles } from "./SiteFiles.tsx";
import { saveAs } from "./saveAs.ts";

/** What other programs can read: predictions for an analyser’s own screen, and the plan with its readings. */
export function FilesSection({ expected }: { readonly expected: Stages<ExpectedSheet> }) {
  const title = usePlan((s) => s.plan.title);
  const { result: sheet, model, answers } = expected;
  // One file for each state and length: steps that read the same share it.
  const curves = sheet?.steps.filter(
    (step, i, all) =>
      step.figures &&
      all.findIndex(
        (one) =>
          one.state === step.state &&
          one.lengths_m.driven_m === step.lengths_m.driven_m &&
          one.lengths_m.reflector_m === step.lengths_m.reflector_m,
      ) === i,
  );
  const prediction = (step: ExpectedSheet["steps"][number]) => {
    const words = stepWords[step.kind].title;
    const file = predictionFile(
      step.figures!.curve,
      `${title}; ${stateWords[step.state!]}; step ${step.number}, ${words}; ${model === "preview" ? "quick preview" : "full-wave"}`,
      today(),
    );
    if (!file.ok) return say(file.problems[0]!.message, { isTrouble: true });
    saveAs(`${title} step ${step.number} ${stateWords[step.state!]}`, ".s1p", file.value, "text/plain");
  };
  return (
    <div className="bn-part">
      <section className="bn-said" aria-label="Predictions">
        <h3>Predictions to lay under an analyser’s own sweep</h3>
        <p>
          One-port Touchstone files: MHz, reflection against 50 Ω. Their first comment says that they are predictions,
          and of what day.
        </p>
        <Progress answers={answers} isShown={sheet !== null} />
        {sheet && (
          <>
            <ul className="bn-files">
              {curves!.map((step) => (
                <li key={step.number}>
                  <Button icon={<Icon name="save" />} onClick={() => prediction(step)}>
                    {`Step ${step.number}: ${stepWords[step.kind].title}`}
                  </Button>
                </li>
              ))}
            </ul>
            <SourceWords model={model ?? "preview"} what="Predictions" />
          </>
        )}
      </section>
      <AnswerFiles />
      <SiteFiles />
      <section className="bn-said" aria-label="The plan">
        <h3>The plan itself</h3>
        <p>Readings, log, pairs and correction are in it. A plain text that opens here again, on any machine.</p>
        <div className="fr-acts">
          <Button icon={<Icon name="save" />} onClick={savePlan}>
            Save the plan with its readings
          </Button>
        </div>
      </section>
    </div>
  );
}
