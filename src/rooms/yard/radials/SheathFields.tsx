import { limits, type RadialField, type SavedPlan, withRadials } from "../../../../engine/index.ts";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { Switch } from "../../../ui/Switch.tsx";
import { fieldHand } from "../fieldHand.ts";
import type { YardEdits } from "../useYardEdits.ts";

/** PVC, the usual sheath: relative permittivity 3 to 4; as thick as the wire again. */
const usualPermittivity = 3.5;
const usualThickness = 2;

/** Bare radials or radials in a sheath, the same for all elements. */
export function SheathFields({ plan, edits }: { readonly plan: SavedPlan; readonly edits: YardEdits }) {
  const radials = plan.elements[0]!.radials;
  const { insulation } = radials;
  const sheathe = (part: Partial<NonNullable<RadialField["insulation"]>>) => (p: SavedPlan) =>
    withRadials(p, { insulation: { ...usual(p.elements[0]!.radials), ...p.elements[0]!.radials.insulation, ...part } });
  return (
    <section className="radials__part">
      <h3>The wire</h3>
      <Switch
        label="Radials are"
        choices={[
          { value: "bare", label: "bare" },
          { value: "sheathed", label: "insulated" },
        ]}
        value={insulation ? "sheathed" : "bare"}
        onChange={(value) =>
          edits.change(
            value === "bare" ? (p) => withRadials(p, { insulation: null }) : sheathe({}),
            value === "bare" ? "take bare wire for radials" : "take insulated wire for radials",
          )
        }
      />
      {insulation && (
        <>
          <QuantityField
            label="over the insulation"
            kind="diameter_mm"
            value={insulation.diameter_mm}
            least={radials.diameter_mm}
            most={limits.insulationDiameter_mm}
            {...fieldHand(
              edits,
              (value) => sheathe({ diameter_mm: value }),
              "change the insulation",
              "sheath thickness",
            )}
          />
          <QuantityField
            label="its relative permittivity"
            kind="ratio"
            value={insulation.relativePermittivity}
            least={limits.insulationPermittivity.least}
            most={limits.insulationPermittivity.most}
            hint="PVC 3 to 4, polyethylene 2.3"
            {...fieldHand(
              edits,
              (value) => sheathe({ relativePermittivity: value }),
              "change the insulation",
              "sheath permittivity",
            )}
          />
        </>
      )}
    </section>
  );
}

const usual = ({ diameter_mm }: RadialField) => ({
  diameter_mm: Number((usualThickness * diameter_mm).toFixed(2)),
  relativePermittivity: usualPermittivity,
});
