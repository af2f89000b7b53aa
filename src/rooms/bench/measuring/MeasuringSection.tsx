import { useState } from "react";
import type { BenchAllowance, BenchReading, ExpectedSheet } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { beforeWords, stepWords } from "../../../text/stepWords.ts";
import { Button } from "../../../ui/Button.tsx";
import { Progress } from "../../feed/Progress.tsx";
import { SourceWords } from "../../feed/SourceWords.tsx";
import type { Stages } from "../../feed/useStages.ts";
import { elementName } from "../../yard/elementName.ts";
import { benchOf } from "../useBenchEdit.ts";
import { AllowanceFields } from "./AllowanceFields.tsx";
import { LeadFields } from "./LeadFields.tsx";
import { ReadingChart } from "./ReadingChart.tsx";
import { StepCard } from "./StepCard.tsx";
import { StepReadings } from "./StepReadings.tsx";
import { readingsOfStep } from "./stepReadings.ts";

interface Props {
  readonly allowance: BenchAllowance;
  readonly expected: Stages<ExpectedSheet>;
}

const none: readonly BenchReading[] = [];

/** The measuring procedure of this plan, one step open at a time, with what to expect and what was read. */
export function MeasuringSection({ allowance, expected }: Props) {
  const plan = usePlan((s) => s.plan);
  const bench = benchOf(plan);
  const readings = bench.readings ?? none;
  const { result: sheet, model, problems, answers } = expected;
  const [openNumber, setOpenNumber] = useState(1);
  const nameOf = (id: string) => {
    const element = plan.elements.find((one) => one.id === id);
    return element ? elementName(plan, element) : id;
  };
  const step = sheet?.steps.find((one) => one.number === openNumber) ?? sheet?.steps[0];
  const own = step && sheet ? readingsOfStep(step, sheet.steps, readings) : none;
  return (
    <div className="bn-part">
      <details className="fr-fold" open={readings.length === 0}>
        <summary>Before you measure</summary>
        <ul className="bn-todo">
          {beforeWords.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
      <LeadFields />
      <AllowanceFields
        allowance={allowance}
        isStated={bench.allowance !== undefined}
        hasReflector={plan.elements.length > 1}
      />
      {problems.length > 0 && (
        <ul className="fr-problem">
          {problems.map((one) => (
            <li key={`${one.where} ${one.message}`}>{one.message}</li>
          ))}
        </ul>
      )}
      <Progress answers={answers} isShown={sheet !== null} />
      {sheet && step && (
        <div className="bn-procedure">
          <nav aria-label="Steps">
            <ol className="bn-steps">
              {sheet.steps.map((one) => {
                const count = readingsOfStep(one, sheet.steps, readings).length;
                return (
                  <li key={one.number}>
                    <button
                      type="button"
                      aria-current={one.number === step.number ? "step" : undefined}
                      onClick={() => setOpenNumber(one.number)}
                    >
                      <span className="bn-number">{one.number}</span>
                      <span>
                        {stepWords[one.kind].title}
                        {count > 0 && (
                          <span className="bn-count">{count === 1 ? "1 reading" : `${count} readings`}</span>
                        )}
                      </span>
                    </button>
                  </li>
                );
              })}
            </ol>
          </nav>
          <section className="bn-open" aria-label={`Step ${step.number}: ${stepWords[step.kind].title}`}>
            <h3>
              Step {step.number} of {sheet.steps.length}: {stepWords[step.kind].title}
            </h3>
            <StepCard step={step} sheet={sheet} readings={own} lead={bench.lead} nameOf={nameOf} />
            {step.figures && (
              <>
                <ReadingChart step={step} sheet={sheet} readings={own} lead={bench.lead} stale={false} />
                <StepReadings
                  key={step.number}
                  step={step}
                  sheet={sheet}
                  readings={own}
                  all={readings}
                  lead={bench.lead}
                />
              </>
            )}
            <div className="fr-acts">
              <Button disabled={step.number === 1} onClick={() => setOpenNumber(step.number - 1)}>
                Step before
              </Button>
              <Button disabled={step.number === sheet.steps.length} onClick={() => setOpenNumber(step.number + 1)}>
                Next step
              </Button>
            </div>
          </section>
        </div>
      )}
      {sheet && (
        <>
          <SourceWords model={model ?? "preview"} what="Expected readings" />
          <p className="fr-small">
            {sheet.soils.length > 1 &&
              "The range runs over the plan’s soil, one of half its conductivity and one of twice; yours may lie outside. "}
            Curves between solved frequencies were off by {figure(sheet.error_ohm, 2)} Ω at most where that was checked.
          </p>
        </>
      )}
    </div>
  );
}
