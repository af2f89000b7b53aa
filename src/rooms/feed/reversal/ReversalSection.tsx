import { useMemo, useState } from "react";
import {
  defaultReversal,
  interestOf,
  type Line,
  type PlanFeedline,
  type PlanReversal,
  reflectorOf,
  withElement,
} from "../../../../engine/index.ts";
import { AzimuthCut } from "../../../charts/AzimuthCut.tsx";
import type { DesignTrace } from "../../../charts/DesignTrace.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { outerRing_dBi } from "../../../charts/gainScale.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { answerModels, inModel } from "../../../store/answerModels.ts";
import { bandSpan } from "../../../store/bandSpan.ts";
import { readoutRequest } from "../../../store/readoutRequest.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { Button } from "../../../ui/Button.tsx";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { Switch } from "../../../ui/Switch.tsx";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import { headingOf } from "../../yard/heading.ts";
import { capacitanceText, inductanceText } from "../match/sectionWords.ts";
import { Progress } from "../Progress.tsx";
import { pairPlans } from "../pair/pairPlans.ts";
import { RoomTable } from "../RoomTable.tsx";
import { SourceWords } from "../SourceWords.tsx";
import type { FeedlineEdit } from "../useFeedlineEdit.ts";
import { useStages } from "../useStages.ts";
import { useStill } from "../useStill.ts";
import { ContactTable } from "./ContactTable.tsx";
import { searched_ohm } from "./loadSearch.ts";
import { RelaySketch } from "./RelaySketch.tsx";
import { reversalState, type SolvedState } from "./reversalState.ts";

interface Props {
  readonly feedline: PlanFeedline;
  readonly cable: Line;
  readonly edit: FeedlineEdit;
  readonly makeWorker: MakeWorker;
}

const goals = [
  { value: "front-to-back", label: "best front-to-back" },
  { value: "as-now", label: "as the reflector now" },
] as const;
const kinds = [
  { value: "part", label: "coil or capacitor" },
  { value: "stub", label: "stub" },
] as const;
const stateNames = { forward: "Forward", reverse: "Reverse", single: "Single", grounded: "Grounded" } as const;

/** Two like elements, a load at the base of whichever stands behind, and relays: the beam turned round. */
export function ReversalSection({ feedline, cable, edit, makeWorker }: Props) {
  const plan = useStill(usePlan((s) => s.plan));
  const isGood = usePlan((s) => s.verdict.ok);
  const editPlan = usePlan((s) => s.edit);
  const units = useSettings((s) => s.units);
  const wanted = useStill(feedline);
  const choice = feedline.reversal ?? defaultReversal;
  const [stateId, setStateId] = useState<SolvedState["state"]["id"]>("forward");
  const [bearing, setBearing] = useState<number | null>(null);
  const heading_deg = headingOf(plan);
  const { elevation_deg, rearSector_deg } = interestOf(plan);
  const plans = useMemo(() => pairPlans(plan, false), [plan]);

  const stages = useMemo(() => {
    if (!plans || !isGood) return [];
    return answerModels(plan)
      .best.toReversed()
      .map((model) => ({
        model,
        ask: {
          plans: { ...plans, parasitic: inModel(plans.parasitic, model), fed: inModel(plans.fed, model) },
          choice: wanted.reversal ?? defaultReversal,
          feedline: wanted,
          cable,
          span: bandSpan(plan.band, plan.frequency_MHz),
          request: { ...readoutRequest(plan), azimuthCutElevation_deg: elevation_deg },
        },
      }));
  }, [plans, isGood, plan, wanted, cable, elevation_deg]);
  const { result, model, problems, answers } = useStages(makeWorker, stages, reversalState);
  const set = (change: Partial<PlanReversal>, label: string) => edit({ reversal: { ...choice, ...change } }, label);

  if (!plans)
    return <p className="fr-waiting">There is no second vertical to turn the beam with: add a reflector first.</p>;
  const solved = result?.states.find((one) => one.state.id === stateId) ?? result?.states[0];
  const traces: DesignTrace[] = result
    ? result.states.map(({ state, readout }, i) => ({
        id: state.id,
        name: stateNames[state.id].toLowerCase(),
        role: state.id === "forward" ? "live" : "pin",
        style: Math.max(0, i - 1),
        readout,
      }))
    : [];
  const reflector = reflectorOf(plan);
  const alike_m = plans.fed.elements[0]!.height_m;

  return (
    <div className="fr-part">
      <p>
        To turn the beam round, both verticals are made alike ({formatQuantity(alike_m, "length_m", units)}, as the
        driven); whichever stands behind gets a load at its base that makes it the reflector.
      </p>
      <div className="fr-acts">
        <Switch<PlanReversal["goal"]>
          label="load chosen for"
          choices={goals}
          value={choice.goal}
          onChange={(goal) => set({ goal }, "choose what the load is for")}
        />
        <Switch<PlanReversal["load"]>
          label="made of"
          choices={kinds}
          value={choice.load}
          onChange={(load) => set({ load }, "choose the kind of load")}
        />
      </div>
      {problems.length > 0 && (
        <ul className="fr-problem">
          {problems.map((one) => (
            <li key={one.message}>{one.message}</li>
          ))}
        </ul>
      )}
      <Progress answers={answers} isShown={result !== null} />
      {result && solved && model && (
        <>
          <section className="fr-verdict" aria-label="The load">
            <p className="fr-verdict-words">{`${signedFigure(result.best.reactance_ohm, 1)} Ω at the base behind`}</p>
            <p>
              {choice.goal === "front-to-back"
                ? `Best front-to-back at ${figure(elevation_deg, 0)}° with a load of no loss: ${figure(result.best.readout.path.frontToBack_dB, 1)} dB.`
                : `Nearest to what the present reflector carries (${currentText(result.present)} of the driven’s current): ${currentText(result.best.readout.baseCurrents[1]!.current)}.`}
              {(result.best.reactance_ohm <= searched_ohm.least || result.best.reactance_ohm >= searched_ohm.most) &&
                " It lies at the end of what was tried; beyond it might be better."}
            </p>
            <p>
              {result.loads.map((load, i) => (
                <span key={load.kind}>
                  {i > 0 && ", or "}
                  {load.kind === "coil" && `A coil of ${inductanceText(load.inductance_uH!)}`}
                  {load.kind === "capacitor" && `A capacitor of ${capacitanceText(load.capacitance_pF!)}`}
                  {load.length_m !== undefined &&
                    `${load.kind === "open stub" ? "an open" : "a shorted"} stub of ${formatQuantity(load.length_m, "length_m", units)} of ${cable.name}`}
                  {` (${impedanceText(load.design_ohm.re, load.design_ohm.im)} with its loss)`}
                </span>
              ))}
              . One for each base.
            </p>
            <div className="fr-acts">
              {reflector && (
                <Button
                  onClick={() =>
                    editPlan(
                      (p) =>
                        withElement(p, reflector.id, (element) => ({
                          ...plans.fed.elements[1]!,
                          id: element.id,
                          base: {
                            kind: "loaded",
                            resistance_ohm: result.load.design_ohm.re,
                            reactance_ohm: result.load.design_ohm.im,
                          },
                        })),
                      "make both alike, with a load behind",
                    )
                  }
                >
                  Put it into the plan: both alike, load behind
                </Button>
              )}
            </div>
          </section>
          <Switch<SolvedState["state"]["id"]>
            label="relays stand at"
            choices={result.states.map(({ state }) => ({ value: state.id, label: stateNames[state.id] }))}
            value={solved.state.id}
            onChange={setStateId}
          />
          <div className="fr-two">
            <div className="fr-said">
              <RelaySketch solved={solved} loadName={result.load.kind} />
              <p className="fr-small">
                Our own sketch, relays at the bases. Where they stand in a box between the elements, the cables to the
                bases turn the load: keep the load at the base, or add half waves.
              </p>
            </div>
            <AzimuthCut
              traces={traces}
              heading_deg={heading_deg}
              elevation_deg={elevation_deg}
              rearSector_deg={rearSector_deg}
              form="polar"
              outer_dBi={outerRing_dBi(traces.flatMap((t) => t.readout?.azimuthCut.gain_dBi ?? []))}
              marker_deg={bearing ?? Math.round(heading_deg) % 360}
              stale={false}
              onMarker={setBearing}
            />
          </div>
          <RoomTable
            caption={`Each state solved, at ${figure(elevation_deg, 0)}° elevation`}
            heads={[
              "relays",
              "toward the beam, dBi",
              "toward behind, dBi",
              "difference, dB",
              "what the line sees",
              "current of the unfed one",
            ]}
            rows={result.states.map(({ state, readout, input_ohm }) => [
              stateNames[state.id],
              figure(readout.path.forward_dBi, 1),
              figure(readout.path.back_dBi, 1),
              signedFigure(readout.path.frontToBack_dB, 1),
              impedanceText(input_ohm.re, input_ohm.im),
              unfedText(state, readout),
            ])}
          />
          <ContactTable states={result.states} power_W={feedline.power_W} />
          <details className="fr-fold">
            <summary>Base reactances that were tried ({result.tried.length})</summary>
            <RoomTable
              caption="Without loss"
              heads={["base reactance", "front-to-back, dB", "forward, dBi", "current behind over front"]}
              rows={result.tried.map(({ reactance_ohm, readout }) => [
                `${signedFigure(reactance_ohm, 2)} Ω`,
                figure(readout.path.frontToBack_dB, 1),
                figure(readout.path.forward_dBi, 1),
                currentText(readout.baseCurrents[1]!.current),
              ])}
            />
          </details>
          <SourceWords model={model} what="Loads tried and relay states" />
        </>
      )}
    </div>
  );
}

const currentText = ({ re, im }: { readonly re: number; readonly im: number }) =>
  `${figure(Math.hypot(re, im), 2)} at ${signedFigure((Math.atan2(im, re) * 180) / Math.PI, 0)}°`;

/** Base currents are scaled to the first fed element's. */
function unfedText(state: SolvedState["state"], readout: SolvedState["readout"]): string {
  const unfed = state.elements.find(({ base }) => base.kind !== "fed");
  const own = readout.baseCurrents.find((one) => one.elementId === unfed?.elementId);
  return !own || Math.hypot(own.current.re, own.current.im) < 1e-6 ? "none at its base" : currentText(own.current);
}
