import { useMemo, useRef, useState } from "react";
import { type BestDesign, wavelength_m, withBestDesign } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { chooseTrial, useTrialChoices } from "../../../store/trials/useTrialChoices.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Button } from "../../../ui/Button.tsx";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { useYardEdits } from "../../yard/useYardEdits.ts";
import { ChoiceField } from "../ChoiceField.tsx";
import { SpanFields } from "../SpanFields.tsx";
import { SaveMenu } from "../save/SaveMenu.tsx";
import { TrialBar } from "../TrialBar.tsx";
import { useLengths } from "../useLengths.ts";
import { useTrial } from "../useTrial.ts";
import { bestTable } from "./bestTable.ts";
import { bestWords } from "./bestWords.ts";
import { FrontChart } from "./FrontChart.tsx";

const weightNames = [
  { key: "forward", label: "gain ahead" },
  { key: "back", label: "front to back" },
  { key: "rear", label: "front to worst behind" },
  { key: "swr", label: "low SWR" },
] as const;

/** The best pair by what the person weighs, as a trade between what cannot all be had. */
export function BestSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("best");
  const { picture, run, isCurrent } = trial;
  const choices = useTrialChoices((s) => s.best);
  const lambda = wavelength_m(usePlan((s) => s.plan.frequency_MHz));
  const lengths = useLengths();
  const [refused, setRefused] = useState<string | null>(null);
  const edits = useYardEdits(setRefused);
  const drawings = useRef<HTMLDivElement>(null);
  const { weights } = choices;
  const words = useMemo(() => (picture ? bestWords(picture, lengths) : []), [picture, lengths]);
  const use = (design: BestDesign, name: string) => {
    edits.settle();
    edits.change((plan) => withBestDesign(plan, rounded(design)), `use ${name} of the search`);
  };
  const row = (design: BestDesign, name: string) => [
    name,
    <Button key="use" aria-label={`Use ${name}`} onClick={() => use(design, name)}>
      Use
    </Button>,
    lengths.near(design.driven_m),
    lengths.near(design.reflector_m),
    lengths.near(design.spacing_m),
    ...(choices.coil_ohm > 0 ? [design.coil_ohm === 0 ? "none" : `${figure(design.coil_ohm, 1)} Ω`] : []),
    figure(design.figures.forward_dBi, 2),
    figure(design.figures.frontToBack_dB, 1),
    figure(design.figures.frontToRear_dB, 1),
    figure(design.figures.swr, 2),
    impedanceText(design.impedance_ohm.re, design.impedance_ohm.im),
    lengths.round(design.wire_m),
    design.isSolved ? "solved" : "estimated",
  ];

  return (
    <div className="tl-part">
      <fieldset>
        <legend className="tl-legend">How much each counts (0: not at all)</legend>
        <div className="tl-fields">
          {weightNames.map(({ key, label }) => (
            <ChoiceField
              key={key}
              label={label}
              kind="ratio"
              value={weights[key]}
              least={0}
              most={100}
              hint={key === "swr" ? "for each 1 above 1, over the band" : "for each dB"}
              onChange={(value) => chooseTrial("best", { weights: { ...weights, [key]: value } })}
            />
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend className="tl-legend">Within these bounds</legend>
        <div className="tl-fields">
          <SpanFields
            name="driven"
            span={choices.driven_wl}
            wavelength={lambda}
            least_wl={0.05}
            most_wl={0.75}
            onChange={(driven_wl) => chooseTrial("best", { driven_wl })}
          />
          <SpanFields
            name="reflector"
            span={choices.reflector_wl}
            wavelength={lambda}
            least_wl={0.05}
            most_wl={0.75}
            onChange={(reflector_wl) => chooseTrial("best", { reflector_wl })}
          />
          <SpanFields
            name="spacing"
            span={choices.spacing_wl}
            wavelength={lambda}
            least_wl={0.03}
            most_wl={1}
            onChange={(spacing_wl) => chooseTrial("best", { spacing_wl })}
          />
          <ChoiceField
            label="reflector’s coil, up to"
            kind="resistance_ohm"
            value={choices.coil_ohm}
            least={0}
            most={1000}
            hint="of reactance in its base; 0: none"
            onChange={(coil_ohm) => chooseTrial("best", { coil_ohm })}
          />
          <ChoiceField
            label="highest SWR to take"
            kind="ratio"
            value={choices.swr}
            least={1.05}
            most={100}
            hint="over the band"
            onChange={(swr) => chooseTrial("best", { swr })}
          />
          <div className="tl-bound">
            <label className="check">
              <input
                type="checkbox"
                checked={choices.wire_m !== null}
                onChange={(event) => chooseTrial("best", { wire_m: event.currentTarget.checked ? 200 : null })}
              />
              wire at most
            </label>
            {choices.wire_m !== null && (
              <ChoiceField
                label="uprights and radials"
                kind="length_m"
                value={choices.wire_m}
                least={0.1}
                most={100_000}
                onChange={(wire_m) => chooseTrial("best", { wire_m })}
              />
            )}
          </div>
          <ChoiceField
            label="seed"
            kind="count"
            value={choices.seed}
            least={0}
            most={4_294_967_295}
            hint="the same finds the same"
            onChange={(seed) => chooseTrial("best", { seed: Math.round(seed) })}
          />
        </div>
      </fieldset>
      <TrialBar
        trial={trial}
        verb="Find the best"
        obstacle={obstacle}
        end={
          picture && run && <SaveMenu run={run} name="search" table={() => bestTable(picture)} drawings={drawings} />
        }
      />
      {picture && (
        <>
          <ul className="tl-said">
            {words.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <output className="fr-problem tl-refused">{refused}</output>
          <div ref={drawings}>
            <FrontChart picture={picture} stale={!isCurrent} />
          </div>
          <RoomTable
            caption="Designs on the front, best first by your weights; “now” is the plan the search began with"
            heads={[
              "",
              "",
              "driven",
              "reflector",
              "spacing",
              ...(choices.coil_ohm > 0 ? ["coil"] : []),
              "ahead, dBi",
              "front to back, dB",
              "worst behind, dB",
              "SWR over the band",
              "R + jX",
              "all wire",
              "",
            ]}
            rows={[row(picture.start, "now"), ...picture.front.map((design, i) => row(design, `${i + 1}`))]}
          />
        </>
      )}
    </div>
  );
}

/** To the half centimetre that anyone can cut, and to the tenth of an ohm. */
function rounded(design: BestDesign): BestDesign {
  const even = (m: number) => Math.round(m * 200) / 200;
  return {
    ...design,
    driven_m: even(design.driven_m),
    reflector_m: even(design.reflector_m),
    spacing_m: even(design.spacing_m),
    coil_ohm: Math.round(design.coil_ohm * 10) / 10,
  };
}
