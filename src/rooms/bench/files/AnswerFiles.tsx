import { useCalmAnswer } from "../../../store/useCalmAnswer.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Button } from "../../../ui/Button.tsx";
import { Icon } from "../../../ui/Icon.tsx";
import { SourceWords } from "../../feed/SourceWords.tsx";
import { today } from "../today.ts";
import { patternCsv, sweepCsv } from "./answerCsv.ts";
import { saveAs } from "./saveAs.ts";

/** What the Sky and the Feed draw, as tables. */
export function AnswerFiles() {
  const plan = usePlan((s) => s.plan);
  const readout = useCalmAnswer((s) => s.readout);
  const model = useCalmAnswer((s) => s.model);
  const band = useCalmAnswer((s) => s.band);
  const bandModel = useCalmAnswer((s) => s.bandModel);
  const state = useCalmAnswer((s) => s.state);
  const isFresh = state === "fresh";
  return (
    <section className="bn-said" aria-label="Pattern and sweep">
      <h3>Pattern and sweep</h3>
      <p>Comma-separated, units in the heads, what they are and by which model in the lines above.</p>
      <div className="fr-acts">
        <Button
          icon={<Icon name="save" />}
          disabled={!readout || !isFresh}
          onClick={() =>
            readout && saveAs(`${plan.title} pattern`, ".csv", patternCsv(plan, readout, model, today()), "text/csv")
          }
        >
          Save the pattern as CSV
        </Button>
        <Button
          icon={<Icon name="save" />}
          disabled={!band || !isFresh}
          onClick={() =>
            band && saveAs(`${plan.title} sweep`, ".csv", sweepCsv(plan, band, bandModel, today()), "text/csv")
          }
        >
          Save the sweep as CSV
        </Button>
      </div>
      {readout && <SourceWords model={model} what="Pattern" />}
    </section>
  );
}
