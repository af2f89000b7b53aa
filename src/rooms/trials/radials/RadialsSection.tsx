import { useMemo, useRef, useState } from "react";
import { limits, type RadialLaying, wavelength_m, withRadialLaying } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { radialWire_m } from "../../../store/trials/trialRequests.ts";
import { chooseTrial, useTrialChoices } from "../../../store/trials/useTrialChoices.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Button } from "../../../ui/Button.tsx";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { useYardEdits } from "../../yard/useYardEdits.ts";
import { ChoiceField } from "../ChoiceField.tsx";
import { LineChart } from "../chart/LineChart.tsx";
import { SaveMenu } from "../save/SaveMenu.tsx";
import { TrialBar } from "../TrialBar.tsx";
import { useLengths } from "../useLengths.ts";
import { useTrial } from "../useTrial.ts";
import { heightName, layingText } from "./layingText.ts";
import { radialsLines } from "./radialsLines.ts";
import { radialsTable } from "./radialsTable.ts";
import { radialsWords } from "./radialsWords.ts";

/** What a reel of wire buys as radials: how many, how long, shared how, lying or raised. */
export function RadialsSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("radials");
  const { picture, run, isCurrent } = trial;
  const choices = useTrialChoices((s) => s.radials);
  const own_m = usePlan((s) => radialWire_m(s.plan));
  const lambda = wavelength_m(usePlan((s) => s.plan.frequency_MHz));
  const lengths = useLengths();
  const [refused, setRefused] = useState<string | null>(null);
  const edits = useYardEdits(setRefused);
  const drawings = useRef<HTMLDivElement>(null);
  const wire_m = choices.wire_m ?? own_m;
  const drawn = useMemo(() => (picture ? radialsLines(picture, lengths) : null), [picture, lengths]);
  const use = (laying: RadialLaying) => {
    edits.settle();
    edits.change((plan) => withRadialLaying(plan, laying), "lay the radials as the trial has them");
  };
  const row = (laying: RadialLaying, head: string) => [
    head,
    <Button key="use" aria-label={`Use ${head}: ${layingText(laying, lengths)}`} onClick={() => use(laying)}>
      Use
    </Button>,
    layingText(laying, lengths),
    lengths.near(laying.wire_m),
    figure(laying.forward_dBi, 2),
    laying.frontToBack_dB === undefined ? "–" : figure(laying.frontToBack_dB, 1),
    figure(laying.loss_dB, 2),
    impedanceText(laying.resistance_ohm, laying.reactance_ohm),
    figure(laying.swr50, 2),
  ];
  const heads = ["", "", "radials", "wire", "ahead, dBi", "front to back, dB", "lost, dB", "R + jX", "SWR"];

  return (
    <div className="tl-part">
      <div className="tl-fields">
        <ChoiceField
          label="wire at hand"
          kind="length_m"
          value={wire_m}
          least={0.1}
          most={20_000}
          hint={`the plan lays ${lengths.near(own_m)}`}
          onChange={(value) => chooseTrial("radials", { wire_m: value })}
        />
        <div className="tl-bound">
          <label className="check">
            <input
              type="checkbox"
              checked={choices.raised_m !== null}
              onChange={(event) => chooseTrial("radials", { raised_m: event.currentTarget.checked ? 1 : null })}
            />
            raised as well
          </label>
          {choices.raised_m !== null && (
            <ChoiceField
              label="at a height of"
              kind="length_m"
              value={choices.raised_m}
              least={0.06}
              most={limits.radialHeight_wl * lambda}
              onChange={(raised_m) => chooseTrial("radials", { raised_m })}
            />
          )}
        </div>
      </div>
      <TrialBar
        trial={trial}
        verb="Lay it out"
        obstacle={obstacle}
        end={
          picture &&
          run && <SaveMenu run={run} name="radial wire" table={() => radialsTable(picture)} drawings={drawings} />
        }
      />
      {picture && drawn && (
        <>
          <ul className="tl-said">
            {radialsWords(picture, lengths).map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <output className="fr-problem tl-refused">{refused}</output>
          <div ref={drawings}>
            <LineChart
              {...drawn}
              title="Gain ahead for the wire that is laid"
              note="dBi, best laying of each length, shared evenly"
              said={radialsWords(picture, lengths).join(" ")}
              xName={`wire in all radials, ${lengths.unit}`}
              xText={(value) => figure(value, 0)}
              unit="dBi"
              decimals={2}
              marker={wire_m * lengths.perMetre}
              markerName="wire at hand"
              perStep={1}
              tall_px={220}
              stale={!isCurrent}
              onMarker={(value) => chooseTrial("radials", { wire_m: Math.round(value / lengths.perMetre) })}
            />
          </div>
          <RoomTable
            caption={`What ${lengths.near(picture.wire_m)} of wire can be laid as, best first`}
            heads={heads}
            rows={[
              ...(picture.own ? [row(picture.own, "now")] : []),
              ...picture.heights.map((one) => row(one.best, `best ${heightName(one.height_m, lengths)}`)),
              ...picture.heights.flatMap((one) =>
                one.splits.length > 1
                  ? one.splits.map((split) =>
                      row(
                        split.best,
                        `${Math.round(split.firstPart * 100)}/${Math.round(100 - split.firstPart * 100)} ${heightName(one.height_m, lengths)}`,
                      ),
                    )
                  : [],
              ),
            ]}
          />
          {picture.heights.map((one) => (
            <details key={one.height_m} className="fr-fold">
              <summary>{`Every count tried, ${heightName(one.height_m, lengths)}, shared evenly`}</summary>
              <RoomTable
                caption={`${lengths.near(picture.wire_m)} of wire, ${heightName(one.height_m, lengths)}`}
                heads={heads}
                rows={one.counts.map((laying) => row(laying, `${laying.fields[0]?.count ?? 0} each`))}
              />
            </details>
          ))}
        </>
      )}
    </div>
  );
}
