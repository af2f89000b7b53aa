import { useState } from "react";
import { asMeasuredPlan, type Estimate, type Refit, type SavedPlan, withPin } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { answerModels } from "../../../store/answerModels.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { stateWords } from "../../../text/benchWords.ts";
import { misfitWords, refitWords, untoldWords } from "../../../text/refitWords.ts";
import { Button } from "../../../ui/Button.tsx";
import { say } from "../../../ui/say.ts";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import { Progress } from "../../feed/Progress.tsx";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { SourceWords } from "../../feed/SourceWords.tsx";
import { elementName } from "../../yard/elementName.ts";
import { shortLength } from "../measuring/cutWords.ts";
import { benchOf, withBench } from "../useBenchEdit.ts";
import { asCutPlan } from "./asCut.ts";
import { CurrentSection } from "./CurrentSection.tsx";
import { useRefit } from "./useRefit.ts";

/** What the readings say the antenna is, beside what was planned; and the plan corrected by them. */
export function RefitSection({ makeWorker }: { readonly makeWorker: MakeWorker }) {
  const plan = usePlan((s) => s.plan);
  const edit = usePlan((s) => s.edit);
  const [trySoils, setTrySoils] = useState(true);
  const { result: refit, model, problems, answers } = useRefit(makeWorker, trySoils);
  const bench = benchOf(plan);
  const isBest = model === answerModels(plan).best[0];
  const nameOf = (id: string) => {
    const element = plan.elements.find((one) => one.id === id);
    return element ? elementName(plan, element) : id;
  };
  const takeBack = usePlan((s) => s.undo);
  const undo = { label: "Undo", run: takeBack };
  const use = (found: Refit) => {
    edit((now) => corrected(now, found), "correct the plan by the readings");
    say("Every room now shows the plan as it was measured; the planned one is pinned beside it.", { action: undo });
  };
  const goBack = () => {
    edit((now) => withBench(asCutPlan(now), { asMeasured: undefined }), "take the correction back");
    say("The plan is as it was cut again; only the soil that was found stays.", { action: undo });
  };
  if (!bench.readings)
    return (
      <div className="bn-part">
        <p className="fr-waiting">
          There are no readings yet. Type them at the steps of the part “Measuring”, or drop a .s1p file there: with the
          driven alone, the reflector alone, and the driven with the reflector connected, even at one frequency each,
          the plan can be corrected.
        </p>
        <CurrentSection makeWorker={makeWorker} />
      </div>
    );
  return (
    <div className="bn-part">
      {bench.asMeasured && (
        <div className="fr-note">
          <p>
            The plan on screen carries the correction of {bench.asMeasured.date}: its lengths are those the wires act,
            not those they are cut. Sheets and steps go on giving lengths to cut.
          </p>
          <Button onClick={goBack}>Take the correction back</Button>
        </div>
      )}
      <label className="check">
        <input type="checkbox" checked={trySoils} onChange={(event) => setTrySoils(event.currentTarget.checked)} />
        try a drier and a wetter soil as well
      </label>
      {problems.length > 0 && (
        <ul className="fr-problem">
          {problems.map((one) => (
            <li key={`${one.where} ${one.message}`}>{one.message}</li>
          ))}
        </ul>
      )}
      <Progress answers={answers} isShown={refit !== null} />
      {refit && (
        <>
          <section className="fr-verdict" aria-label="What the readings say">
            <h3>What the readings say</h3>
            {refitWords(refit, nameOf).map((line) => (
              <p key={line}>{line}</p>
            ))}
            <p>{misfitWords(refit.misfit)}</p>
            <div className="fr-acts">
              {!isBest && <p>This is the quick preview’s verdict: wait for the full answer before you cut.</p>}
              {!bench.asMeasured && isBest && (
                <Button look="hot" onClick={() => use(refit)}>
                  Use the corrected plan
                </Button>
              )}
            </div>
          </section>
          <BesideTable refit={refit} />
          <NextCuts refit={refit} nameOf={nameOf} />
          <EstimateTable refit={refit} nameOf={nameOf} />
          <section className="bn-ifnot" aria-label="What the readings cannot tell">
            <h3>What the readings cannot tell</h3>
            <ul>
              {(untoldWords(refit, nameOf).length > 0
                ? untoldWords(refit, nameOf)
                : ["Nothing of the above is mixed up: each figure is told by the readings themselves."]
              ).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
          <RoomTable
            caption="How far the corrected model is from each reading"
            heads={["", "root mean square of R and X, Ω"]}
            rows={refit.perReading.map((one) => [
              `${bench.readings?.find((reading) => reading.id === one.id)?.date ?? ""}, ${stateWords[one.state]}`,
              figure(one.rms_ohm, 2),
            ])}
          />
          <SourceWords model={model ?? "preview"} what="Correction" />
          <p className="fr-small">
            The model was interpolated between solves and was off by {figure(refit.error_ohm, 2)} Ω at most where that
            was checked.
          </p>
        </>
      )}
      <CurrentSection makeWorker={makeWorker} />
    </div>
  );
}

/** The plan as measured, the planned one pinned beside it where a pin is free: one step to undo. */
function corrected(plan: SavedPlan, { asMeasured }: Refit): SavedPlan {
  const pinned = withPin(plan, "As planned");
  return withBench(asMeasuredPlan(pinned.ok ? pinned.value : plan, asMeasured), { asMeasured });
}

const plusMinus = ({ value, error }: Estimate, decimals: number, unit: string) =>
  `${figure(value, decimals)}${error === null ? "" : ` ± ${figure(error, decimals)}`}${unit}`;
const from = ({ from: source }: Estimate) =>
  source === "readings" ? "the readings" : source === "assumed" ? "mostly assumed" : "not fitted";

function EstimateTable({ refit, nameOf }: { readonly refit: Refit; nameOf(id: string): string }) {
  const percent = ({ value, error, from: source }: Estimate): Estimate => ({
    value: 100 * (value - 1),
    error: error === null ? null : 100 * error,
    from: source,
  });
  const rows = refit.elements.flatMap(({ elementId, lengthFactor, resistance_ohm, reactance_ohm }) => {
    const name = nameOf(elementId);
    return [
      [`${name}: acts longer than cut by`, plusMinus(percent(lengthFactor), 2, " %"), from(lengthFactor)],
      [`${name}: its ground adds R`, plusMinus(resistance_ohm, 1, " Ω"), from(resistance_ohm)],
      [`${name}: its ground adds X`, plusMinus(reactance_ohm, 1, " Ω"), from(reactance_ohm)],
    ];
  });
  const mutual = refit.mutual_ohm;
  return (
    <RoomTable
      caption="Fitted figures with their standard errors; over what the model says"
      heads={["", "fitted", "told by"]}
      rows={[
        ...rows,
        ...(mutual
          ? [
              ["mutual impedance, times the model’s", plusMinus(refit.mutualScale, 3, ""), from(refit.mutualScale)],
              [
                "mutual impedance at the plan’s frequency",
                `${impedanceText(mutual.value.re, mutual.value.im)} ± ${figure(mutual.error_ohm, 1)} Ω`,
                "the fit",
              ],
            ]
          : []),
        ...(refit.mutualDirect_ohm
          ? [
              [
                "the same from three readings alone",
                impedanceText(refit.mutualDirect_ohm.re, refit.mutualDirect_ohm.im),
                "the readings",
              ],
            ]
          : []),
      ]}
    />
  );
}

function BesideTable({ refit: { planned, measured } }: { readonly refit: Refit }) {
  const rows: readonly [string, (of: Refit["planned"]) => string][] = [
    ["front-to-back, dB", (of) => figure(of.frontToBack_dB, 1)],
    ["gain ahead, dBi", (of) => figure(of.forward_dBi, 2)],
    ["R + jX at the driven", (of) => impedanceText(of.impedance_ohm.re, of.impedance_ohm.im)],
    ["SWR", (of) => figure(of.swr, 2)],
    [
      "reflector’s current over the driven’s",
      (of) =>
        of.currentRatio
          ? `${figure(of.currentRatio.magnitude, 2)} at ${signedFigure(of.currentRatio.phase_deg, 0)}°`
          : "–",
    ],
  ];
  return (
    <RoomTable
      caption="At the plan’s lengths, frequency and path"
      heads={["", "as planned", "as measured"]}
      rows={rows.map(([name, text]) => [name, text(planned), <b key="measured">{text(measured)}</b>])}
    />
  );
}

function NextCuts({ refit, nameOf }: { readonly refit: Refit; nameOf(id: string): string }) {
  const units = useSettings((s) => s.units);
  if (refit.nextCut.length === 0) return null;
  const slope = (mm: number | null) =>
    mm === null ? "–" : units === "metric" ? `${figure(mm, 2)} mm` : `${figure(mm / 25.4, 3)} in`;
  return (
    <RoomTable
      caption="What to do to each wire, as it stood at the newest reading, so that it acts as planned"
      heads={["", "do", "give or take", "by the engine, per kHz", "by your own readings, per kHz"]}
      rows={refit.nextCut.map((one) => [
        nameOf(one.elementId),
        <b key="do">
          {Math.abs(one.cut_mm) < 1
            ? "leave it"
            : `${one.cut_mm > 0 ? "cut off" : "add"} ${shortLength(Math.abs(one.cut_mm), units)}`}
        </b>,
        shortLength(one.error_mm, units),
        slope(one.mmPerKHz),
        slope(one.ownMmPerKHz),
      ])}
    />
  );
}
