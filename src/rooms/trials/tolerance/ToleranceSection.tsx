import { useMemo, useRef, useState } from "react";
import { figure } from "../../../charts/figure.ts";
import { chooseTrial, useTrialChoices } from "../../../store/trials/useTrialChoices.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Switch } from "../../../ui/Switch.tsx";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { ChoiceField } from "../ChoiceField.tsx";
import { LineChart } from "../chart/LineChart.tsx";
import { SaveMenu } from "../save/SaveMenu.tsx";
import { TrialBar } from "../TrialBar.tsx";
import { useLengths } from "../useLengths.ts";
import { useTrial } from "../useTrial.ts";
import { toleranceCharts } from "./toleranceCharts.ts";
import { bandRowsOf, holdRows, slopeRows } from "./toleranceRows.ts";
import { toleranceTable } from "./toleranceTable.ts";
import { toleranceWords } from "./toleranceWords.ts";

const soils = [
  { value: "1", label: "as in the plan" },
  { value: "2", label: "half to twice" },
  { value: "3", label: "a third to three times" },
] as const;

const degrees = (value: number) => `${figure(value, 0)}°`;

/** How exactly it has to be built, and what becomes of it when it is not. */
export function ToleranceSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("tolerance");
  const { picture, run, isCurrent } = trial;
  const choices = useTrialChoices((s) => s.tolerance);
  const isSoil = usePlan((s) => s.plan.ground.kind === "soil");
  const lengths = useLengths();
  const [elevation_deg, setElevation] = useState(8);
  const [azimuth_deg, setAzimuth] = useState(180);
  const drawings = useRef<HTMLDivElement>(null);
  const bands = picture?.bands;
  const charts = useMemo(() => (bands ? toleranceCharts(bands) : []), [bands]);
  const metres = (label: string, key: "driven_m" | "reflector_m" | "spacing_m") => (
    <ChoiceField
      label={label}
      kind="length_m"
      value={choices[key]}
      least={0}
      most={2}
      hint="either way"
      onChange={(value) => chooseTrial("tolerance", { [key]: value })}
    />
  );

  return (
    <div className="tl-part">
      <div className="tl-fields">
        {metres("driven off by", "driven_m")}
        {metres("reflector off by", "reflector_m")}
        {metres("spacing off by", "spacing_m")}
        <ChoiceField
          label="thickness off by, %"
          kind="ratio"
          value={choices.thickness * 100}
          least={0}
          most={50}
          hint="of the uprights"
          onChange={(percent) => chooseTrial("tolerance", { thickness: percent / 100 })}
        />
        <ChoiceField
          label="heading off by"
          kind="angle_deg"
          value={choices.heading_deg}
          least={0}
          most={90}
          hint="either way"
          onChange={(heading_deg) => chooseTrial("tolerance", { heading_deg })}
        />
        <ChoiceField
          label="designs drawn"
          kind="count"
          value={choices.draws}
          least={20}
          most={5000}
          hint="at random, always the same"
          onChange={(draws) => chooseTrial("tolerance", { draws: Math.round(draws) })}
        />
        {isSoil && (
          <Switch<"1" | "2" | "3">
            label="conductivity of the soil, dry to wet"
            choices={soils}
            value={`${choices.soil}`}
            onChange={(value) => chooseTrial("tolerance", { soil: Number(value) as 1 | 2 | 3 })}
          />
        )}
      </div>
      <TrialBar
        trial={trial}
        verb="Vary it"
        obstacle={obstacle}
        end={
          picture &&
          run && <SaveMenu run={run} name="tolerance" table={() => toleranceTable(picture)} drawings={drawings} />
        }
      />
      {picture && (
        <>
          <ul className="tl-said">
            {toleranceWords(picture, lengths).map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <RoomTable
            caption={`How far off each may be by itself until ${figure(picture.lost.frontToBack_dB, 1)} dB of front to back, or ${figure(picture.lost.forward_dB, 1)} dB ahead, is lost`}
            heads={[
              "",
              "less, for front to back",
              "more, for front to back",
              "less, for gain ahead",
              "more, for gain ahead",
            ]}
            rows={holdRows(picture)}
          />
          <RoomTable
            caption="What a little more of each changes, where the plan stands"
            heads={["one more …", "ahead, dB", "front to back, dB", "worst behind, dB", "R, Ω", "X, Ω", "SWR"]}
            rows={slopeRows(picture)}
          />
          {bands && (
            <RoomTable
              caption={`Of ${bands.draws} designs drawn within these errors, 90 of 100 lie from … to; in the middle`}
              heads={["", "exact", "from", "middle", "to"]}
              rows={bandRowsOf(picture)}
            />
          )}
          <div className="tl-charts" ref={drawings}>
            {charts.map((chart) => (
              <LineChart
                key={chart.id}
                {...chart}
                said="Shaded: where 90 of 100 lie."
                xText={degrees}
                unit="dBi"
                decimals={1}
                marker={chart.id === "azimuth" ? azimuth_deg : elevation_deg}
                markerName="read at"
                perStep={1}
                stale={!isCurrent}
                onMarker={chart.id === "azimuth" ? setAzimuth : setElevation}
              />
            ))}
          </div>
        </>
      )}
    </div>
  );
}
