import { useMemo, useRef, useState } from "react";
import {
  drivenOf,
  limits,
  type PacePicture,
  reflectorOf,
  type SavedPlan,
  spacingOf,
  wavelength_m,
  withElementHeight,
  withSpacing,
} from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { chooseTrial, useTrialChoices } from "../../../store/trials/useTrialChoices.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Button } from "../../../ui/Button.tsx";
import { Switch } from "../../../ui/Switch.tsx";
import { useYardEdits } from "../../yard/useYardEdits.ts";
import { ChoiceField } from "../ChoiceField.tsx";
import { LineChart } from "../chart/LineChart.tsx";
import { SaveMenu } from "../save/SaveMenu.tsx";
import { TrialBar } from "../TrialBar.tsx";
import { useLengths } from "../useLengths.ts";
import { useTrial } from "../useTrial.ts";
import { paceLines } from "./paceLines.ts";
import { paceTable } from "./paceTable.ts";
import { paceWords } from "./paceWords.ts";

/** The reflector walked away from the driven: where the back goes quiet, and what it costs ahead and in the feed. */
export function PaceSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("pace");
  const { picture, run, isCurrent } = trial;
  const look = run?.stages[0]?.request.look;
  const choices = useTrialChoices((s) => s.pace);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const here_m = usePlan((s) => spacingOf(s.plan));
  const lengths = useLengths();
  const lambda = wavelength_m(frequency_MHz);
  const [refused, setRefused] = useState<string | null>(null);
  const edits = useYardEdits(setRefused);
  const drawings = useRef<HTMLDivElement>(null);
  const drawn = useMemo(() => (picture ? paceLines(picture, look, lengths) : null), [picture, look, lengths]);

  const goTo = (spacing_m: number, label: string, mergeKey?: string) =>
    edits.change((plan) => (picture ? atStep(plan, picture, spacing_m) : plan), label, mergeKey);

  return (
    <div className="tl-part">
      <div className="tl-fields">
        <ChoiceField
          label="walk from"
          kind="length_m"
          value={choices.from_wl * lambda}
          least={0.01 * lambda}
          most={choices.to_wl * lambda}
          hint={`${figure(choices.from_wl, 3)} λ`}
          onChange={(m) => chooseTrial("pace", { from_wl: m / lambda })}
        />
        <ChoiceField
          label="to"
          kind="length_m"
          value={choices.to_wl * lambda}
          least={choices.from_wl * lambda}
          most={Math.min(2 * lambda, limits.position_m)}
          hint={`${figure(choices.to_wl, 3)} λ`}
          onChange={(m) => chooseTrial("pace", { to_wl: m / lambda })}
        />
        <Switch
          label="lengths on the way"
          choices={[
            { value: "fixed", label: "as they are" },
            { value: "retuned", label: "recut at each step" },
          ]}
          value={choices.lengths}
          onChange={(value) => chooseTrial("pace", { lengths: value })}
        />
      </div>
      <TrialBar
        trial={trial}
        verb="Walk it"
        obstacle={obstacle}
        end={
          picture &&
          run && <SaveMenu run={run} name="walk of the spacing" table={() => paceTable(picture)} drawings={drawings} />
        }
      />
      {picture && drawn && (
        <>
          <div className="tl-said">
            <ul>
              {paceWords(picture, lengths).map((one) => (
                <li key={one}>{one}</li>
              ))}
            </ul>
            <p className="fr-acts">
              <Button
                onClick={() =>
                  goTo(picture.spacing_m[picture.best.frontToBack]!, "move the reflector to the quietest spacing")
                }
              >
                {`Put the reflector at ${lengths.near(picture.spacing_m[picture.best.frontToBack]!)}`}
              </Button>
            </p>
            <output className="fr-problem tl-refused">{refused}</output>
          </div>
          <div className="tl-charts" ref={drawings}>
            {drawn.charts.map((chart) => (
              <LineChart
                key={chart.title}
                {...chart}
                x={drawn.x}
                xName={`spacing, ${lengths.unit}`}
                xText={lengths.onAxis}
                places={drawn.places}
                marker={(here_m ?? Number.NaN) * lengths.perMetre}
                markerName="reflector at"
                perStep={lengths.unit === "m" ? 100 : 24}
                stale={!isCurrent}
                onMarker={(value) => goTo(value / lengths.perMetre, "move the reflector", "trial spacing")}
                onSettle={edits.settle}
              />
            ))}
          </div>
        </>
      )}
    </div>
  );
}

/** The reflector put so far back; where the walk recut both, they are cut as it had them there. */
function atStep(plan: SavedPlan, picture: PacePicture, spacing_m: number): SavedPlan {
  const rounded_m = Math.round(spacing_m * 200) / 200;
  const moved = spacingOf(plan) === rounded_m ? plan : withSpacing(plan, rounded_m);
  if (picture.atLimit === undefined) return moved;
  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  if (!driven || !reflector) return moved;
  const cut = (list: readonly number[]) => Math.round(nearest(picture.spacing_m, list, rounded_m) * 1000) / 1000;
  const recut = withElementHeight(moved, reflector.id, cut(picture.reflectorHeight_m));
  return withElementHeight(recut, driven.id, cut(picture.drivenHeight_m));
}

function nearest(at: readonly number[], of: readonly number[], place: number): number {
  let found = 0;
  for (const [i, one] of at.entries()) if (Math.abs(one - place) < Math.abs(at[found]! - place)) found = i;
  return of[found]!;
}
