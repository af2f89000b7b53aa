import { memo } from "react";
import type { ElementPlan, RadialChange, SavedPlan } from "../../../engine/index.ts";
import { limits, withElement, withRadials } from "../../../engine/index.ts";
import { QuantityField } from "../../ui/QuantityField.tsx";
import { fieldHand } from "./fieldHand.ts";
import type { WarnedField } from "./geometryWarnings.ts";
import { lieOf, radialLies, withRadialHeight } from "./radialLies.ts";
import type { YardEdits } from "./useYardEdits.ts";

interface Props {
  readonly edits: YardEdits;
  readonly diameter_mm: number;
  readonly radials: ElementPlan["radials"];
  /** Absent: the fields speak for all elements. */
  readonly elementId: string | undefined;
  readonly isForAll: boolean;
  readonly title: string | undefined;
  readonly wavelength: number;
  /** Id of the list of cautions, and the fields it says something about, with blanks between. */
  readonly cautionId: string;
  readonly warned: string;
}

/** Conductor and radials of one element, or of all. */
export const WireFields = memo(function WireFields(p: Props) {
  const { edits, radials, elementId, title, wavelength } = p;
  const key = (name: string) => `field ${name} ${elementId ?? "all"}`;
  const radial = (name: keyof RadialChange, label: string) =>
    fieldHand(edits, (value) => (plan) => withRadials(plan, { [name]: value }, elementId), label, key(name));
  const caution = (field: WarnedField) => (p.warned.split(" ").includes(field) ? p.cautionId : undefined);
  const prefix = title === undefined ? "" : `${title} `;
  const thickness = {
    kind: "diameter_mm",
    least: limits.diameter_wl.least * wavelength * 1000,
    most: limits.diameter_wl.most * wavelength * 1000,
  } as const;
  const height = fieldHand(
    edits,
    (value) => (plan) => withRadialHeight(plan, value, elementId),
    `change how the ${prefix}radials lie`,
    key("height_m"),
  );

  return (
    <fieldset className="yard-wire">
      <legend className="visually-hidden">{title ?? "each element"}</legend>
      {title !== undefined && <p className="yard-wire-name">{title}</p>}
      <QuantityField
        label="conductor"
        {...thickness}
        value={p.diameter_mm}
        cautionId={caution("diameter")}
        {...fieldHand(
          edits,
          (value) => (plan) => withDiameter(plan, value, elementId),
          `change the ${prefix}conductor`,
          key("diameter"),
        )}
      />
      <QuantityField
        label="radials"
        kind="count"
        value={radials.count}
        least={limits.radials.least}
        most={limits.radials.most}
        hint={radials.each ? "laid one by one" : p.isForAll ? "each element" : " "}
        cautionId={caution("radialCount")}
        {...radial("count", `change the number of ${prefix}radials`)}
      />
      {radials.count > 0 && (
        <>
          <QuantityField
            label="radial length"
            kind="length_m"
            value={radials.length_m}
            least={limits.radial_wl.least * wavelength}
            most={Math.min(limits.radial_wl.most * wavelength, limits.length_m)}
            cautionId={caution("radialLength")}
            {...radial("length_m", `change the length of the ${prefix}radials`)}
          />
          <label className="field yard-lie">
            <span className="field__label">how the radials lie</span>
            <select
              className="field__select"
              value={lieOf(radials.height_m) ?? "own"}
              onChange={(event) => {
                const lie = radialLies.find((one) => one.id === event.currentTarget.value);
                if (lie) height.onCommit(lie.height_m, false);
              }}
            >
              {lieOf(radials.height_m) === undefined && <option value="own">lying, at a height of my own</option>}
              {radialLies.map((lie) => (
                <option key={lie.id} value={lie.id}>
                  {lie.name}
                </option>
              ))}
            </select>
          </label>
          <QuantityField
            label="radials above soil"
            kind="length_m"
            value={radials.height_m}
            least={-limits.radialDepth_m}
            most={limits.radialHeight_wl * wavelength}
            hint={heightHint(radials.height_m)}
            {...height}
          />
          <QuantityField
            label="radial wire"
            {...thickness}
            value={radials.diameter_mm}
            {...radial("diameter_mm", `change the wire of the ${prefix}radials`)}
          />
        </>
      )}
    </fieldset>
  );
});

function heightHint(height_m: number): string {
  if (height_m < 0) return "in the soil, base on it";
  if (height_m === 0) return "lying: counts as 5 mm";
  return height_m > limits.previewHeight_m ? "raised, base with them" : "lying, to the wire’s middle";
}

function withDiameter(plan: SavedPlan, diameter_mm: number, elementId: string | undefined): SavedPlan {
  if (elementId !== undefined) return withElement(plan, elementId, (element) => ({ ...element, diameter_mm }));
  return { ...plan, elements: plan.elements.map((element) => ({ ...element, diameter_mm })) };
}
