import { limits, lineOfCable, lineTypes, lineWavelength_m, type PlanFeedline } from "../../../../engine/index.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { formatOtherUnits } from "../../../ui/quantity/formatQuantity.ts";
import type { FeedlineEdit } from "../useFeedlineEdit.ts";
import { CableChoice, OwnCable } from "./CableFields.tsx";

const { feedline: bounds } = limits;

/** What every part of the room rests on: the cable, its length, the power, the SWR that is taken. */
export function LineFields({ feedline, edit }: { readonly feedline: PlanFeedline; readonly edit: FeedlineEdit }) {
  const isStated = usePlan((s) => s.plan.feedline !== undefined);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const units = useSettings((s) => s.units);
  const { cable, length_m } = feedline;
  const line = lineOfCable(cable);
  const listed = cable.kind === "listed" ? lineTypes.find((type) => type.id === cable.id) : undefined;
  const waves = line.ok ? length_m / lineWavelength_m(line.value, frequency_MHz) : Number.NaN;
  return (
    <section className="fr-line" aria-label="Line to the rig">
      <div className="fr-fields">
        <CableChoice cable={cable} edit={edit} />
        <QuantityField
          label="length of the line"
          kind="length_m"
          value={length_m}
          {...bounds.length_m}
          hint={`${waves.toFixed(2)} λ in it, ${formatOtherUnits(length_m, "length_m", units)}`}
          onCommit={(value, stepped) =>
            edit({ length_m: value }, "change the length of the line", stepped ? "line length" : undefined)
          }
        />
        <QuantityField
          label="power at the rig"
          kind="power_W"
          value={feedline.power_W}
          {...bounds.power_W}
          hint="of the carrier, at full power"
          onCommit={(value, stepped) => edit({ power_W: value }, "change the power", stepped ? "power" : undefined)}
        />
        <QuantityField
          label="highest SWR to take"
          kind="ratio"
          value={feedline.swrLimit}
          {...bounds.swrLimit}
          hint="over the whole band"
          onCommit={(value) => edit({ swrLimit: value }, "change the SWR limit")}
        />
      </div>
      {cable.kind === "own" && <OwnCable cable={cable} edit={edit} />}
      <div className="fr-small">
        {!isStated && <p>Assumed until you say otherwise.</p>}
        {listed?.source && (
          <details>
            <summary>where this cable’s figures come from</summary>
            <p>{`${listed.source}.`}</p>
          </details>
        )}
      </div>
    </section>
  );
}
