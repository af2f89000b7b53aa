import { useState } from "react";
import { amateurBands, bandAt, limits, type SavedPlan, withFrequency } from "../../engine/index.ts";
import { usePlan } from "../store/usePlan.ts";
import { Icon } from "../ui/Icon.tsx";
import { Popover } from "../ui/Popover.tsx";
import { QuantityField } from "../ui/QuantityField.tsx";
import { formatQuantity } from "../ui/quantity/formatQuantity.ts";
import { Switch } from "../ui/Switch.tsx";
import { movedToBand } from "./movedToBand.ts";

const own = "own";
const MHz = (frequency_MHz: number) => formatQuantity(frequency_MHz, "frequency_MHz", "metric");
const regions = [
  { value: "1", label: "Region 1" },
  { value: "2", label: "Region 2" },
  { value: "3", label: "Region 3" },
] as const;
const regionHelp = "1: Europe, Africa, Middle East, northern Asia. 2: the Americas. 3: the rest of Asia, Oceania.";

/** Frequency and band: what is designed for, and what the match should cover. */
export function BandPicker() {
  const label = usePlan((s) => s.plan.band?.label ?? "");
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  return (
    <Popover
      title="Band and frequency"
      buttonClass="button button--quiet topbar__fact"
      label={
        <>
          <span className="topbar__what">{label || "frequency"}</span>
          <b className="topbar__frequency">{MHz(frequency_MHz)}</b>
          <Icon name="down" />
        </>
      }
    >
      {() => <BandPanel />}
    </Popover>
  );
}

function BandPanel() {
  const plan = usePlan((s) => s.plan);
  const edit = usePlan((s) => s.edit);
  const [isScaled, setScaled] = useState(true);
  const region = plan.site?.ituRegion ?? 1;
  const bands = amateurBands.filter((band) => band.ituRegion === region);
  const edges = plan.band ?? bandAt(plan.frequency_MHz, region);
  const chosen = bands.find(
    (band) => band.label === edges?.label && band.from_MHz === edges.from_MHz && band.to_MHz === edges.to_MHz,
  );

  const setEdge = (edge: "from_MHz" | "to_MHz") => (value: number, stepped: boolean) =>
    edges &&
    edit(
      (p) => ({ ...p, band: { label: edges.label, from_MHz: edges.from_MHz, to_MHz: edges.to_MHz, [edge]: value } }),
      "change the band’s edge",
      stepped ? `band ${edge}` : undefined,
    );

  return (
    <div className="picker">
      <label className="field">
        <span className="field__label">Band</span>
        <select
          className="field__select"
          data-first
          value={chosen?.label ?? own}
          onChange={(event) => {
            const band = bands.find((one) => one.label === event.currentTarget.value);
            if (band) edit((p) => movedToBand(p, band, isScaled), `move to ${band.label}`);
          }}
        >
          {!chosen && <option value={own}>my own edges</option>}
          {bands.map((band) => (
            <option key={band.label} value={band.label}>
              {band.label}, {MHz(band.from_MHz).replace(" MHz", "")} to {MHz(band.to_MHz)}
            </option>
          ))}
        </select>
      </label>
      <label className="check">
        <input type="checkbox" checked={isScaled} onChange={(event) => setScaled(event.currentTarget.checked)} />
        <span>Another band scales all lengths to its wavelength, pinned designs too</span>
      </label>
      <QuantityField
        label="Design frequency"
        kind="frequency_MHz"
        value={plan.frequency_MHz}
        least={limits.frequency_MHz.least}
        most={limits.frequency_MHz.most}
        onCommit={(value, stepped) =>
          edit((p) => withFrequency(p, value), "change the frequency", stepped ? "frequency" : undefined)
        }
      />
      {edges && (
        <div className="picker__pair">
          <QuantityField
            label="Band from"
            kind="frequency_MHz"
            value={edges.from_MHz}
            least={limits.frequency_MHz.least}
            most={limits.frequency_MHz.most}
            check={(value) =>
              value < edges.to_MHz ? null : `The band must begin below its upper edge, ${MHz(edges.to_MHz)}.`
            }
            onCommit={setEdge("from_MHz")}
          />
          <QuantityField
            label="to"
            kind="frequency_MHz"
            value={edges.to_MHz}
            least={limits.frequency_MHz.least}
            most={limits.frequency_MHz.most}
            check={(value) =>
              value > edges.from_MHz ? null : `The band must end above its lower edge, ${MHz(edges.from_MHz)}.`
            }
            onCommit={setEdge("to_MHz")}
          />
        </div>
      )}
      <Switch
        label="ITU region"
        choices={regions}
        value={`${region}`}
        onChange={(value) => edit((p) => withRegion(p, Number(value) as 1 | 2 | 3), "change the ITU region")}
      />
      <p className="soft">{regionHelp}</p>
      <p className="soft">
        {chosen ? `These edges: ${chosen.source}.` : "These edges are your own."} Your licence and national rules decide
        what you may use.
      </p>
    </div>
  );
}

/** Another region: the same band with that region's edges, unless the edges are the person's own. */
function withRegion(plan: SavedPlan, ituRegion: 1 | 2 | 3): SavedPlan {
  const site = { heading_deg: plan.site?.heading_deg ?? 0, ituRegion };
  const { band } = plan;
  const isListed = amateurBands.some(
    (one) => one.label === band?.label && one.from_MHz === band.from_MHz && one.to_MHz === band.to_MHz,
  );
  const there = amateurBands.find((one) => one.ituRegion === ituRegion && one.label === band?.label);
  if (!band || !isListed || !there) return { ...plan, site };
  return { ...plan, site, band: { label: there.label, from_MHz: there.from_MHz, to_MHz: there.to_MHz } };
}
