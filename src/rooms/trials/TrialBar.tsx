import type { ReactNode } from "react";
import { answerModels } from "../../store/answerModels.ts";
import type { TrialKind, TrialRun } from "../../store/trials/TrialRun.ts";
import { planStore, usePlan } from "../../store/usePlan.ts";
import { Button } from "../../ui/Button.tsx";
import { errorWords } from "./errorWords.ts";
import { modelWords } from "./modelWords.ts";
import { planDifferences } from "./planDifferences.ts";
import { promiseWords } from "./promiseWords.ts";
import { useLengths } from "./useLengths.ts";
import type { ShownTrial } from "./useTrial.ts";

interface Props<K extends TrialKind> {
  readonly trial: ShownTrial<K>;
  /** What the press that starts it says. */
  readonly verb: string;
  /** What keeps it from being started; null: nothing. */
  readonly obstacle: string | null;
  /** What stands at the end of the row, such as how to save. */
  readonly end?: ReactNode;
}

/** Starts and stops a trial and says how far it is, whose it is, by which model and how exact. */
export function TrialBar<K extends TrialKind>({ trial, verb, obstacle, end }: Props<K>) {
  const { run, isCurrent } = trial;
  const hasTwoModels = usePlan(({ plan }) => plan.ground.kind === "soil" && answerModels(plan).best.length > 1);
  const isGoing = run?.state === "going";
  const canGoOn =
    run !== undefined && isCurrent && (run.state === "stopped" || (run.state === "failed" && run.fault !== null));
  return (
    <section className="tl-bar" aria-label="This trial">
      <div className="tl-acts">
        {isGoing ? (
          <Button onClick={trial.stop}>Stop</Button>
        ) : canGoOn ? (
          <Button look="hot" onClick={trial.goOn}>
            Go on
          </Button>
        ) : (
          <Button
            look={run?.state === "done" && isCurrent ? "plain" : "hot"}
            disabled={obstacle !== null}
            onClick={trial.start}
          >
            {run?.state === "done" && isCurrent ? `${verb} again` : verb}
          </Button>
        )}
        <p className="tl-state" role="status">
          {obstacle ?? (run ? stateWords(run) : "")}
        </p>
        {end}
      </div>
      {!run && obstacle === null && <p className="tl-promise">{promiseWords(trial.kind, hasTwoModels)}</p>}
      {isGoing && (
        <progress
          className="tl-progress"
          aria-label="Part of this stage that is done"
          max={1}
          value={run.progress?.part ?? 0}
        />
      )}
      {run && !isCurrent && <OldWords run={run} trial={trial} />}
      {run && run.problems.length > 0 && (
        <ul className="fr-problem" role="alert">
          {run.problems.map((one) => (
            <li key={`${one.where} ${one.message}`}>{one.message}</li>
          ))}
        </ul>
      )}
      {run?.fault && (
        <p className="fr-problem" role="alert">
          The engine stopped: {run.fault}. What is shown is what there was before.
        </p>
      )}
      {run?.picture && <SourceOf run={run} />}
    </section>
  );
}

function stateWords({ state, progress, stage, stages, picture }: TrialRun): string {
  switch (state) {
    case "going": {
      const what = stages.length === 1 ? "" : stage === 0 ? "Quick preview first. " : "Full answer. ";
      if (!progress) return `${what}On its way.`;
      const { done, total, left_ms } = progress;
      const left = left_ms === null || done === 0 ? "" : `, about ${leftWords(left_ms)} left`;
      return `${what}${done} of ${total} solves so far${left}.`;
    }
    case "stopped":
      return picture ? "Stopped; what is shown is as far as it came." : "Stopped.";
    case "failed":
    case "done":
      return "";
  }
}

function leftWords(left_ms: number): string {
  const seconds = Math.max(1, Math.round(left_ms / 1000));
  return seconds < 100 ? `${seconds} s` : `${Math.round(seconds / 60)} min`;
}

/** A result of another plan stays, says so, and can be had for the plan on screen. */
function OldWords<K extends TrialKind>({ run, trial }: { readonly run: TrialRun; readonly trial: ShownTrial<K> }) {
  const plan = usePlan((s) => s.plan);
  const lengths = useLengths();
  const differences = planDifferences(run.plan, plan, lengths.text);
  return (
    <div className="fr-note tl-old">
      <p>
        {differences.length > 0
          ? `Of an earlier plan: ${differences.join("; ")}.`
          : "Asked otherwise than what is set now."}
      </p>
      <p className="fr-acts">
        {run.state === "going" && <Button onClick={trial.start}>Start anew for the plan on screen</Button>}
        {differences.length > 0 && (
          <Button
            onClick={() => planStore.getState().open({ ...plan, ...coreOf(run) }, "go back to the plan of a trial")}
          >
            Go back to that plan
          </Button>
        )}
      </p>
    </div>
  );
}

/** The design as it was; pins, remark and what else is kept beside it are as they are now. */
function coreOf({ plan }: TrialRun) {
  const { frequency_MHz, ground, soilModel, elements, fields, band, interest } = plan;
  return {
    frequency_MHz,
    ground,
    soilModel,
    elements,
    ...(fields && { fields }),
    ...(band && { band }),
    ...(interest && { interest }),
  };
}

function SourceOf({ run }: { readonly run: TrialRun }) {
  const { plan, picture, pictureModel, isWhole, state } = run;
  const exact = picture ? errorWords(picture) : "";
  const isRough = plan.ground.kind === "soil" && pictureModel === "preview";
  const so = isWhole ? "" : ", so far";
  const next =
    isRough && state === "going" && run.stages.length > 1 ? " The full answer takes its place when it is there." : "";
  return (
    <p className="fr-source" data-model={isRough ? "preview" : "exact"}>
      {`${modelWords(plan, pictureModel)}${so}${exact && `: ${exact}`}.${next}`}
    </p>
  );
}
