import { useMemo, useState } from "react";
import { defaultPair, interestOf, type Line, limits, lineTypes, type PlanFeedline } from "../../../../engine/index.ts";
import { AzimuthCut } from "../../../charts/AzimuthCut.tsx";
import type { Curve } from "../../../charts/Curve.ts";
import { CurveChart } from "../../../charts/CurveChart.tsx";
import type { DesignTrace } from "../../../charts/DesignTrace.ts";
import { figure } from "../../../charts/figure.ts";
import { outerRing_dBi } from "../../../charts/gainScale.ts";
import { answerModels, inModel } from "../../../store/answerModels.ts";
import { bandSpan } from "../../../store/bandSpan.ts";
import { readoutRequest } from "../../../store/readoutRequest.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Button } from "../../../ui/Button.tsx";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import { headingOf } from "../../yard/heading.ts";
import { Progress } from "../Progress.tsx";
import { SourceWords } from "../SourceWords.tsx";
import { topFor } from "../topFor.ts";
import type { FeedlineEdit } from "../useFeedlineEdit.ts";
import { useStages } from "../useStages.ts";
import { useStill } from "../useStill.ts";
import { PairTable } from "./PairTable.tsx";
import { pairPlans } from "./pairPlans.ts";
import { type PairRow, pairState } from "./pairState.ts";
import { pairVerdict } from "./pairVerdict.ts";

interface Props {
  readonly feedline: PlanFeedline;
  readonly line: Line;
  /** What the harness is cut from. */
  readonly cable: Line;
  readonly edit: FeedlineEdit;
  readonly makeWorker: MakeWorker;
}

/** Is the harness worth it? One vertical, the reflector, the currents one would like, and what real lines make of them. */
export function PairSection({ feedline, line, cable, edit, makeWorker }: Props) {
  const plan = useStill(usePlan((s) => s.plan));
  const isGood = usePlan((s) => s.verdict.ok);
  const wanted = useStill(feedline);
  const pair = feedline.pair ?? defaultPair;
  const [drawnId, setDrawn] = useState<PairRow["id"] | null>(null);
  const [marker_MHz, setMarker] = useState<number | null>(null);
  const [bearing, setBearing] = useState<number | null>(null);
  const heading_deg = headingOf(plan);
  const { elevation_deg, rearSector_deg } = interestOf(plan);
  const plans = useMemo(() => pairPlans(plan, (wanted.pair ?? defaultPair).asDrawn), [plan, wanted]);

  const asksOf = useMemo(() => {
    if (!plans || !isGood) return [];
    const { best } = answerModels(plan);
    // The quick answer first, so that there is one; the full one takes its place as a whole.
    return best.toReversed().map((model) => ({
      model,
      ask: {
        plans: {
          ...plans,
          single: inModel(plans.single, model),
          parasitic: inModel(plans.parasitic, model),
          fed: inModel(plans.fed, model),
        },
        ratio: wanted.pair ?? defaultPair,
        feedline: wanted,
        line,
        cable,
        span: bandSpan(plan.band, plan.frequency_MHz),
        request: { ...readoutRequest(plan), azimuthCutElevation_deg: elevation_deg },
      },
    }));
  }, [plans, isGood, plan, wanted, line, cable, elevation_deg]);
  const { result: rows, model, problems, answers } = useStages(makeWorker, asksOf, pairState);
  const verdict = useMemo(() => (rows ? pairVerdict(rows, elevation_deg) : null), [rows, elevation_deg]);

  const set = (change: Partial<typeof pair>, label: string, key?: string) =>
    edit({ pair: { ...pair, ...change } }, label, key);
  if (!plans)
    return (
      <p className="fr-waiting">
        There is no second vertical to feed: add one with “Add reflector” above, or in the Yard.
      </p>
    );

  const row =
    rows?.find((one) => one.id === (drawnId ?? verdict?.best) && one.readout) ??
    rows?.find((one) => one.id === "ideal");
  const traces: DesignTrace[] = rows
    ? [trace(rows, "parasitic", "reflector", "live", 0), trace(rows, "single", "one vertical", "pin", 0)]
        .concat(row && row.id !== "ideal" ? [trace(rows, row.id, "with the harness", "pin", 1)] : [])
        .concat([trace(rows, "ideal", "currents as wanted", "pin", 2)])
    : [];
  const outer_dBi = outerRing_dBi(traces.flatMap((t) => t.readout?.azimuthCut.gain_dBi ?? []));
  const curves: Curve[] = rows
    ? rows.flatMap((one): Curve[] => {
        const style = one.id === "single" ? 0 : 1;
        const isLive = one.id === "parasitic";
        if (!one.curve || !(isLive || one.id === "single" || one.id === row?.id)) return [];
        const name = isLive ? "reflector" : one.id === "single" ? "one vertical" : "at the harness";
        return [
          {
            id: one.id,
            name,
            role: isLive ? "live" : "pin",
            style,
            frequency_MHz: one.curve.frequency_MHz,
            value: one.curve.swr,
          },
        ];
      })
    : [];
  const span = bandSpan(plan.band, plan.frequency_MHz);

  return (
    <div className="fr-part">
      <div className="fr-fields">
        <QuantityField
          label="rear current over front"
          kind="ratio"
          value={pair.magnitude}
          {...limits.feedline.ratio}
          hint="1: equal currents"
          onCommit={(magnitude, stepped) =>
            set({ magnitude }, "change the current ratio", stepped ? "ratio" : undefined)
          }
        />
        <QuantityField
          label="rear current leads by"
          kind="angle_deg"
          value={pair.phase_deg}
          {...limits.feedline.phase_deg}
          hint={`${figure(plans.nullPhase_deg, 0)}° nearly cancels straight behind`}
          onCommit={(phase_deg, stepped) => set({ phase_deg }, "change the phase", stepped ? "phase" : undefined)}
        />
        <label className="field fr-cable">
          <span className="field__label">cable of the harness</span>
          <select
            className="field__select"
            value={feedline.sectionId}
            onChange={(event) => edit({ sectionId: event.currentTarget.value }, "choose the cable of the harness")}
          >
            {lineTypes.map((type) => (
              <option key={type.id} value={type.id}>
                {type.name}
              </option>
            ))}
          </select>
        </label>
        <label className="check fr-check">
          <input
            type="checkbox"
            checked={pair.asDrawn}
            onChange={(event) => set({ asDrawn: event.currentTarget.checked }, "choose the elements of the fed pair")}
          />
          <span>elements as drawn (else both as the driven is)</span>
        </label>
      </div>
      {Math.round(pair.phase_deg) !== Math.round(plans.nullPhase_deg) && (
        <div className="fr-acts">
          <Button
            onClick={() => set({ phase_deg: Math.round(plans.nullPhase_deg), magnitude: 1 }, "cancel straight behind")}
          >
            Use {figure(plans.nullPhase_deg, 0)}°, which nearly cancels straight behind at this spacing
          </Button>
        </div>
      )}
      {problems.length > 0 && (
        <ul className="fr-problem">
          {problems.map((one) => (
            <li key={one.message}>{one.message}</li>
          ))}
        </ul>
      )}
      <Progress answers={answers} isShown={rows !== null} />
      {verdict && rows && model && (
        <>
          <section className="fr-verdict" aria-label="Is the harness worth it?">
            <h3>Is the harness worth it?</h3>
            <p className="fr-verdict-words">{verdict.headline}</p>
            {verdict.said.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </section>
          <PairTable
            rows={rows}
            elevation_deg={elevation_deg}
            rearSector_deg={rearSector_deg}
            line={line}
            drawnId={row?.id ?? null}
            onDraw={setDrawn}
          />
          <div className="fr-two">
            <AzimuthCut
              traces={traces}
              heading_deg={heading_deg}
              elevation_deg={elevation_deg}
              rearSector_deg={rearSector_deg}
              form="polar"
              outer_dBi={outer_dBi}
              marker_deg={bearing ?? Math.round(heading_deg) % 360}
              stale={false}
              onMarker={setBearing}
            />
            <CurveChart
              title={`SWR on the line to the rig, against ${figure(line.impedance_ohm, 0)} Ω`}
              note="before any match"
              said={verdict.headline}
              quantity="swr"
              curves={curves}
              band={span}
              bandLabel={span.label}
              design_MHz={plan.frequency_MHz}
              top={topFor(curves, span)}
              limit={feedline.swrLimit}
              marker_MHz={marker_MHz ?? plan.frequency_MHz}
              onMarker={setMarker}
            />
          </div>
          <p className="fr-small">
            Line 1 leads to the driven, line 2 to the element behind; an L network stands before line 2. Gains are for
            power into the harness, its loss taken off; patterns are drawn without that loss. All rows stand on the same
            radials and the same soil.
          </p>
          <SourceWords model={model} what="Currents, patterns and impedances" />
        </>
      )}
    </div>
  );
}

const trace = (
  rows: readonly PairRow[],
  id: PairRow["id"],
  name: string,
  role: "live" | "pin",
  style: number,
): DesignTrace => ({ id, name, role, style, readout: rows.find((one) => one.id === id)?.readout ?? null });
