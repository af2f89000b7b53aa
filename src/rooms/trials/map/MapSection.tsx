import { useCallback, useMemo, useRef, useState } from "react";
import {
  drivenOf,
  limits,
  type MapFigure,
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
import { Switch } from "../../../ui/Switch.tsx";
import { useYardEdits } from "../../yard/useYardEdits.ts";
import { ChoiceField } from "../ChoiceField.tsx";
import { SaveMenu } from "../save/SaveMenu.tsx";
import { TrialBar } from "../TrialBar.tsx";
import { useLengths } from "../useLengths.ts";
import { useTrial } from "../useTrial.ts";
import { GardenBound } from "./GardenBound.tsx";
import { MapChart, type MapPlace } from "./MapChart.tsx";
import { mapFigures } from "./mapFigures.ts";
import { mapSavedTable } from "./mapTable.ts";

const figures = (["frontToBack", "frontToRear", "forward", "swr"] as const).map((value: MapFigure) => ({
  value,
  label: mapFigures[value].label,
}));

/** Spacing and the reflector's length at once: a map of one figure, on which the design can be moved. */
export function MapSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("map");
  const { picture, run, isCurrent } = trial;
  const choices = useTrialChoices((s) => s.map);
  const lambda = wavelength_m(usePlan((s) => s.plan.frequency_MHz));
  const spacing_m = usePlan((s) => spacingOf(s.plan));
  const height_m = usePlan((s) => reflectorOf(s.plan)?.height_m);
  const driven_m = usePlan((s) => drivenOf(s.plan)?.height_m);
  const lengths = useLengths();
  const meeting_m = usePlan(({ plan }) => meetingSpacing_m(plan, choices.from_wl * lambda, choices.to_wl * lambda));
  const here = useMemo(
    () => (spacing_m !== undefined && height_m !== undefined ? { spacing_m, height_m } : null),
    [spacing_m, height_m],
  );
  const [refused, setRefused] = useState<string | null>(null);
  const edits = useYardEdits(setRefused);
  const [cursor, setCursor] = useState<MapPlace | null>(null);
  const drawings = useRef<HTMLDivElement>(null);
  const go = useCallback(
    (place: MapPlace) => {
      edits.change((plan) => moved(plan, place), "move the reflector to a place on the map");
      setCursor(null);
    },
    [edits],
  );

  return (
    <div className="tl-part">
      <div className="tl-fields">
        <ChoiceField
          label="spacing from"
          kind="length_m"
          value={choices.from_wl * lambda}
          least={0.01 * lambda}
          most={choices.to_wl * lambda}
          hint={`${figure(choices.from_wl, 3)} λ`}
          onChange={(m) => chooseTrial("map", { from_wl: m / lambda })}
        />
        <ChoiceField
          label="to"
          kind="length_m"
          value={choices.to_wl * lambda}
          least={choices.from_wl * lambda}
          most={Math.min(2 * lambda, limits.position_m)}
          hint={`${figure(choices.to_wl, 3)} λ`}
          onChange={(m) => chooseTrial("map", { to_wl: m / lambda })}
        />
        <ChoiceField
          label="reflector shorter by, %"
          kind="ratio"
          value={choices.less * 100}
          least={0}
          most={50}
          hint={height_m === undefined ? "" : `from ${lengths.text(height_m * (1 - choices.less))}`}
          onChange={(percent) => chooseTrial("map", { less: percent / 100 })}
        />
        <ChoiceField
          label="longer by, %"
          kind="ratio"
          value={choices.more * 100}
          least={0.1}
          most={50}
          hint={height_m === undefined ? "" : `to ${lengths.text(height_m * (1 + choices.more))}`}
          onChange={(percent) => chooseTrial("map", { more: percent / 100 })}
        />
        <ChoiceField
          label="highest SWR to take"
          kind="ratio"
          value={choices.swrLimit}
          least={1.01}
          most={20}
          hint="drawn as a dashed line"
          onChange={(swrLimit) => chooseTrial("map", { swrLimit })}
        />
        <GardenBound
          label="bound on spacing"
          value={choices.mostSpacing_m}
          first={spacing_m ?? 0.2 * lambda}
          onChange={(mostSpacing_m) => chooseTrial("map", { mostSpacing_m })}
        />
        <GardenBound
          label="bound on height"
          value={choices.mostHeight_m}
          first={height_m ?? driven_m ?? 0.25 * lambda}
          onChange={(mostHeight_m) => chooseTrial("map", { mostHeight_m })}
        />
      </div>
      <TrialBar
        trial={trial}
        verb="Map it"
        obstacle={obstacle}
        end={
          picture && run && <SaveMenu run={run} name="map" table={() => mapSavedTable(picture)} drawings={drawings} />
        }
      />
      <Switch<MapFigure>
        label="figure"
        isLabelShown={false}
        choices={figures}
        value={choices.figure}
        onChange={(value) => chooseTrial("map", { figure: value })}
      />
      {picture && (
        <div ref={drawings} onPointerLeave={() => setCursor(null)}>
          <MapChart
            picture={picture}
            shown={choices.figure}
            swrLimit={choices.swrLimit}
            mostSpacing_m={choices.mostSpacing_m}
            mostHeight_m={choices.mostHeight_m}
            here={here}
            cursor={cursor}
            lengths={lengths}
            stale={!isCurrent}
            onCursor={setCursor}
            onGo={go}
          />
          <p className="fr-note">
            A press on the map, or Enter, puts the reflector there; undo takes it back. The driven stays as it is.
            {meeting_m !== null &&
              ` The lines step at ${lengths.text(meeting_m)}: nearer than that the two fields of radials cross, and one lies on the other.`}
          </p>
          <output className="fr-problem tl-refused">{refused}</output>
        </div>
      )}
    </div>
  );
}

/** To the half centimetre, as drags in the Yard are. */
function moved(plan: SavedPlan, { spacing_m, height_m }: MapPlace): SavedPlan {
  const reflector = reflectorOf(plan);
  if (!reflector) return plan;
  const even = (m: number) => Math.round(m * 200) / 200;
  return withElementHeight(withSpacing(plan, even(spacing_m)), reflector.id, even(height_m));
}

/** The spacing at which the ends of two even fields of radials meet, where the map has it; they then begin to cross. */
function meetingSpacing_m(plan: SavedPlan, from_m: number, to_m: number): number | null {
  const [a, b] = [drivenOf(plan)?.radials, reflectorOf(plan)?.radials];
  const isOver = plan.ground.kind === "soil" && plan.soilModel === "full-wave" && plan.fields?.radials !== "stop";
  if (!isOver || !a || !b || a.each || b.each || plan.fields?.radials === "bus") return null;
  const meeting_m = a.length_m + b.length_m;
  return meeting_m > from_m && meeting_m < to_m ? meeting_m : null;
}
