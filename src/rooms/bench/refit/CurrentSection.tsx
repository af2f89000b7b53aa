import { useMemo, useState } from "react";
import { type ArraySample, drivenOf, interestOf, reflectorOf, type TrialAsk } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { answerModels, inModel } from "../../../store/answerModels.ts";
import { useCalmAnswer } from "../../../store/useCalmAnswer.ts";
import { usePlan } from "../../../store/usePlan.ts";
import type { EngineAsk } from "../../../worker/EngineMessage.ts";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import { Progress } from "../../feed/Progress.tsx";
import { SourceWords } from "../../feed/SourceWords.tsx";
import type { AnswerTo } from "../../feed/useEngineAnswers.ts";
import { type StageState, useStages } from "../../feed/useStages.ts";
import { useStill } from "../../feed/useStill.ts";
import { BlankableField } from "../BlankableField.tsx";
import { currentCheck } from "./currentCheck.ts";

/** Front-to-back from two currents measured at the bases: no reading of impedance is needed for it. */
export function CurrentSection({ makeWorker }: { readonly makeWorker: MakeWorker }) {
  const plan = useStill(usePlan((s) => s.plan));
  const isGood = usePlan((s) => s.verdict.ok);
  const [ratio, setRatio] = useState<number | undefined>(undefined);
  const [phase, setPhase] = useState<number | undefined>(undefined);
  const isAsked = ratio !== undefined && phase !== undefined;
  const stages = useMemo(() => {
    if (!isGood || !isAsked) return [];
    return answerModels(plan)
      .best.toReversed()
      .map((model) => ({
        model,
        ask: {
          plan: inModel(plan, model),
          frequency_MHz: plan.frequency_MHz,
          directions: { elevations_deg: [interestOf(plan).elevation_deg], azimuths_deg: [0, 180] },
        },
      }));
  }, [plan, isGood, isAsked]);
  const { result, model, problems, answers } = useStages(makeWorker, stages, sampleOf);
  const readout = useCalmAnswer((s) => s.readout);
  const [driven, reflector] = [drivenOf(plan), reflectorOf(plan)];
  if (!driven || !reflector) return null;
  const own = readout?.baseCurrents.find((one) => one.elementId === reflector.id)?.current;
  const found =
    result && ratio !== undefined && phase !== undefined
      ? currentCheck(result, plan.elements.indexOf(driven), plan.elements.indexOf(reflector), ratio, phase)
      : null;
  return (
    <section className="bn-part" aria-label="Check by base currents">
      <h3>Check by base currents</h3>
      <p className="bn-said">
        With a current probe and a scope, or two like probes and a two-channel analyser: the reflector’s base current
        over the driven’s, in size and phase. From these alone follows what the pair does at the path’s elevation,
        whatever the ground and the lengths are.
      </p>
      <div className="fr-fields">
        <BlankableField
          label="reflector’s current over the driven’s"
          kind="ratio"
          value={ratio}
          least={0}
          most={100}
          hint={own ? `the plan has ${figure(Math.hypot(own.re, own.im), 2)}` : "a bare number"}
          onCommit={setRatio}
        />
        <BlankableField
          label="its phase, ahead positive"
          kind="angle_deg"
          value={phase}
          least={-360}
          most={360}
          hint={own ? `the plan has ${signedFigure((Math.atan2(own.im, own.re) * 180) / Math.PI, 0)}°` : "degrees"}
          onCommit={setPhase}
        />
      </div>
      {problems.map((one) => (
        <p key={one.where + one.message} className="fr-problem">
          {one.message}
        </p>
      ))}
      {isAsked && <Progress answers={answers} isShown={found !== null} />}
      {found && (
        <>
          <p role="status">
            Front-to-back <b>{figure(found.frontToBack_dB, 1)} dB</b> at {figure(interestOf(plan).elevation_deg, 0)}°
            {readout && ` (the plan has ${figure(readout.path.frontToBack_dB, 1)} dB)`}; ahead the reflector adds{" "}
            {signedFigure(found.aheadOverDriven_dB, 1)} dB to what the driven’s current makes alone.
          </p>
          <SourceWords model={model ?? "preview"} what="Fields of the elements" />
        </>
      )}
    </section>
  );
}

function sampleOf(request: TrialAsk, answerTo: AnswerTo): StageState<ArraySample> {
  const ask: EngineAsk = { kind: "array", request };
  const answer = answerTo(ask);
  if (answer?.kind !== "array") return { asks: [ask], result: null, problems: [] };
  const { result } = answer;
  return result.ok
    ? { asks: [ask], result: result.value, problems: [] }
    : { asks: [ask], result: null, problems: result.problems };
}
