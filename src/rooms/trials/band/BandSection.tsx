import { useMemo, useRef, useState } from "react";
import { megahertz } from "../../../charts/megahertz.ts";
import { bandSpan } from "../../../store/bandSpan.ts";
import { chooseTrial, useTrialChoices } from "../../../store/trials/useTrialChoices.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { ChoiceField } from "../ChoiceField.tsx";
import { LineChart } from "../chart/LineChart.tsx";
import { figureCharts } from "../figureCharts.ts";
import { figureColumns } from "../figureColumns.ts";
import { SaveMenu } from "../save/SaveMenu.tsx";
import { TrialBar } from "../TrialBar.tsx";
import { useTrial } from "../useTrial.ts";
import { bandRows } from "./bandRows.ts";
import { bandWords } from "./bandWords.ts";

/** The beam and the feed across the band: where each is good, and where the beam turns round. */
export function BandSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("band");
  const { picture, run, isCurrent } = trial;
  const look = run?.stages[0]?.request.look;
  const choices = useTrialChoices((s) => s.band);
  const design_MHz = usePlan((s) => s.plan.frequency_MHz);
  const planBand = usePlan((s) => s.plan.band);
  const [marker_MHz, setMarker] = useState<number | null>(null);
  const drawings = useRef<HTMLDivElement>(null);
  const span = useMemo(() => bandSpan(planBand, design_MHz), [planBand, design_MHz]);
  const drawn = useMemo(
    () =>
      picture && {
        charts: figureCharts(picture.figures, look),
        shaded: [{ id: "band", from: span.from_MHz, to: span.to_MHz }],
        places: [
          { id: "design", at: design_MHz, text: "plan" },
          ...picture.reversals_MHz.map((at) => ({ id: `turn${at}`, at, text: "beam turns" })),
        ],
      },
    [picture, look, span, design_MHz],
  );

  return (
    <div className="tl-part">
      <div className="tl-fields">
        <ChoiceField
          label="beyond the band, %"
          kind="ratio"
          value={choices.beyond * 100}
          least={0}
          most={30}
          hint="either side"
          onChange={(percent) => chooseTrial("band", { beyond: percent / 100 })}
        />
        <ChoiceField
          label="SWR up to"
          kind="ratio"
          value={choices.swr}
          least={1.01}
          most={10}
          hint="counts as good"
          onChange={(swr) => chooseTrial("band", { swr })}
        />
        <ChoiceField
          label="F/B from, dB"
          kind="ratio"
          value={choices.frontToBack_dB}
          least={0}
          most={60}
          hint="counts as good"
          onChange={(frontToBack_dB) => chooseTrial("band", { frontToBack_dB })}
        />
        <ChoiceField
          label="gain within, dB"
          kind="ratio"
          value={choices.forwardWithin_dB}
          least={0.01}
          most={20}
          hint="of its best is good"
          onChange={(forwardWithin_dB) => chooseTrial("band", { forwardWithin_dB })}
        />
      </div>
      <TrialBar
        trial={trial}
        verb="Look across the band"
        obstacle={obstacle}
        end={
          picture &&
          run && (
            <SaveMenu
              run={run}
              name="band"
              drawings={drawings}
              table={() => {
                const { heads, row } = figureColumns(picture.figures);
                return {
                  heads: ["frequency [MHz]", ...heads],
                  rows: picture.frequency_MHz.map((f, i) => [f, ...row(i)]),
                };
              }}
            />
          )
        }
      />
      {picture && drawn && (
        <>
          <ul className="tl-said">
            {bandWords(picture, span).map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <RoomTable
            caption={`How wide each stays good; the band ${span.label} is ${khz(span.to_MHz - span.from_MHz)} wide`}
            heads={["", "good from … to, MHz", "width", "of the band"]}
            rows={bandRows(picture, span)}
          />
          <div className="tl-charts" ref={drawings}>
            {drawn.charts.map((chart) => (
              <LineChart
                key={chart.title}
                {...chart}
                x={picture.frequency_MHz}
                xName="MHz"
                xText={megahertz}
                shaded={drawn.shaded}
                places={drawn.places}
                marker={marker_MHz ?? design_MHz}
                markerName="read at"
                perStep={1000}
                stale={!isCurrent}
                onMarker={setMarker}
              />
            ))}
          </div>
        </>
      )}
    </div>
  );
}

const khz = (width_MHz: number) => `${Math.round(width_MHz * 1000)} kHz`;
