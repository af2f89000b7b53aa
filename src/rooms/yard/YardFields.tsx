import { useId, useState } from "react";
import type { ElementPlan, RadialChange, SavedPlan } from "../../../engine/index.ts";
import {
  drivenOf,
  limits,
  reflectorOf,
  spacingOf,
  wavelength_m,
  withElement,
  withElementHeight,
  withRadials,
  withSpacing,
} from "../../../engine/index.ts";
import { useSettings } from "../../store/useSettings.ts";
import { QuantityField } from "../../ui/QuantityField.tsx";
import { formatOtherUnits } from "../../ui/quantity/formatQuantity.ts";
import { elementName } from "./elementName.ts";
import type { GeometryWarning, WarnedField } from "./geometryWarnings.ts";
import { geometryWarnings } from "./geometryWarnings.ts";
import { headingOf, withHeading } from "./heading.ts";
import { lieOf, radialLies, withRadialHeight } from "./radialLies.ts";
import type { PlanChange, YardEdits } from "./useYardEdits.ts";

/** Fields in the first group; the others are about wire. */
const arrayFields: readonly WarnedField[] = ["spacing", "height", "base"];

interface Props {
  readonly plan: SavedPlan;
  readonly edits: YardEdits;
}

/** The measures of the array in figures. Cautions stand under the field they concern. */
export function YardFields({ plan, edits }: Props) {
  const units = useSettings((s) => s.units);
  const id = useId();
  const [wantsAlike, setWantsAlike] = useState(true);

  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  const spacing_m = spacingOf(plan);
  const wavelength = wavelength_m(plan.frequency_MHz);
  const warnings = geometryWarnings(plan);
  const several = plan.elements.length > 1;
  const isAlike = several && wantsAlike && areAlike(plan.elements);

  /** Id of the caution list of a group, where it says something about this field. */
  const cautionId = (field: WarnedField, elementId?: string) =>
    concerning(warnings, field, elementId).length > 0
      ? `${id}-${arrayFields.includes(field) ? "array" : "wire"}`
      : undefined;
  /** What a field needs to hand a value to the plan. */
  const hand = (change: (value: number) => PlanChange, label: string, key: string) => ({
    check: (value: number) => edits.objection(change(value)),
    onCommit: (value: number, stepped: boolean) => edits.change(change(value), label, stepped ? key : undefined),
  });

  return (
    <div className="yard-fields">
      <div className="yard-row">
        {spacing_m !== undefined && (
          <QuantityField
            label="spacing"
            kind="length_m"
            value={spacing_m}
            least={0}
            most={limits.position_m}
            hint={pieces(`${(spacing_m / wavelength).toFixed(3)} λ`, formatOtherUnits(spacing_m, "length_m", units))}
            cautionId={cautionId("spacing")}
            {...hand((value) => (p) => withSpacing(p, value), "move the reflector", "field spacing")}
          />
        )}
        <QuantityField
          label="heading, true"
          kind="bearing_deg"
          value={headingOf(plan)}
          hint={pointOfCompass(headingOf(plan))}
          {...hand((value) => (p) => withHeading(p, value), "turn the beam", "field heading")}
        />
        {plan.elements.map((element) => {
          const name = elementName(plan, element);
          const isReflector = element.id === reflector?.id;
          return (
            <QuantityField
              key={element.id}
              label={`${name} length`}
              kind="length_m"
              value={element.height_m}
              least={limits.height_wl.least * wavelength}
              most={Math.min(limits.height_wl.most * wavelength, limits.length_m)}
              hint={lengthHint(
                element,
                isReflector ? driven : undefined,
                wavelength,
                formatOtherUnits(element.height_m, "length_m", units),
              )}
              cautionId={cautionId("height", element.id)}
              {...(isReflector && driven ? { percentOver: { value: driven.height_m, name: "driven" } } : {})}
              {...hand(
                (value) => (p) => withElementHeight(p, element.id, value),
                `change the ${name} length`,
                `field height ${element.id}`,
              )}
            />
          );
        })}
      </div>
      <Cautions id={`${id}-array`} warnings={warnings.filter((w) => arrayFields.includes(w.field))} />

      <div className="yard-group">
        <h3>Conductor and radials</h3>
        {several && (
          <label className="check">
            <input
              type="checkbox"
              checked={isAlike}
              onChange={(event) => {
                setWantsAlike(event.currentTarget.checked);
                if (event.currentTarget.checked && driven && !areAlike(plan.elements))
                  edits.change((p) => allLike(p, driven), "make conductors and radials alike");
              }}
            />
            {`same for ${plan.elements.length === 2 ? "both" : "all"}`}
          </label>
        )}
      </div>
      <div className="yard-columns" data-several={(several && !isAlike) || undefined}>
        {(isAlike || !several ? plan.elements.slice(0, 1) : plan.elements).map((element) => (
          <WireFields
            key={isAlike ? "all" : element.id}
            element={element}
            elementId={isAlike ? undefined : element.id}
            isForAll={isAlike}
            title={isAlike || !several ? undefined : elementName(plan, element)}
            wavelength={wavelength}
            cautionId={(field) => cautionId(field, isAlike ? undefined : element.id)}
            hand={hand}
          />
        ))}
      </div>
      <Cautions id={`${id}-wire`} warnings={warnings.filter((w) => !arrayFields.includes(w.field))} />
    </div>
  );
}

function Cautions({ id, warnings }: { readonly id: string; readonly warnings: readonly GeometryWarning[] }) {
  if (warnings.length === 0) return null;
  return (
    <ul className="yard-cautions" id={id}>
      {[...new Set(warnings.map((warning) => warning.message))].map((message) => (
        <li key={message}>{message}</li>
      ))}
    </ul>
  );
}

function concerning(warnings: readonly GeometryWarning[], field: WarnedField, elementId?: string): GeometryWarning[] {
  return warnings.filter(
    (w) => w.field === field && (elementId === undefined || w.elementId === undefined || w.elementId === elementId),
  );
}

interface WireProps {
  readonly element: ElementPlan;
  /** Absent: the fields speak for all elements. */
  readonly elementId: string | undefined;
  readonly isForAll: boolean;
  readonly title: string | undefined;
  readonly wavelength: number;
  readonly cautionId: (field: WarnedField) => string | undefined;
  readonly hand: (
    change: (value: number) => PlanChange,
    label: string,
    key: string,
  ) => { check: (value: number) => string | null; onCommit: (value: number, stepped: boolean) => void };
}

/** Conductor and radials of one element, or of all. */
function WireFields({ element, elementId, isForAll, title, wavelength, cautionId, hand }: WireProps) {
  const { radials } = element;
  const key = (name: string) => `field ${name} ${elementId ?? "all"}`;
  const radial = (name: keyof RadialChange, label: string) =>
    hand((value) => (p) => withRadials(p, { [name]: value }, elementId), label, key(name));
  const prefix = title === undefined ? "" : `${title} `;
  const height = hand(
    (value) => (p) => withRadialHeight(p, value, elementId),
    `change how the ${prefix}radials lie`,
    key("height_m"),
  );

  return (
    <fieldset className="yard-wire">
      <legend className="visually-hidden">{title ?? "each element"}</legend>
      {title !== undefined && <p className="yard-wire-name">{title}</p>}
      <QuantityField
        label="conductor"
        kind="diameter_mm"
        least={limits.diameter_wl.least * wavelength * 1000}
        most={limits.diameter_wl.most * wavelength * 1000}
        value={element.diameter_mm}
        cautionId={cautionId("diameter")}
        {...hand((value) => (p) => withDiameter(p, value, elementId), `change the ${prefix}conductor`, key("diameter"))}
      />
      <QuantityField
        label="radials"
        kind="count"
        value={radials.count}
        least={limits.radials.least}
        most={limits.radials.most}
        hint={isForAll ? "each element" : " "}
        cautionId={cautionId("radialCount")}
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
            cautionId={cautionId("radialLength")}
            {...radial("length_m", `change the length of the ${prefix}radials`)}
          />
          <QuantityField
            label="radial wire"
            kind="diameter_mm"
            least={limits.diameter_wl.least * wavelength * 1000}
            most={limits.diameter_wl.most * wavelength * 1000}
            value={radials.diameter_mm}
            {...radial("diameter_mm", `change the wire of the ${prefix}radials`)}
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
        </>
      )}
    </fieldset>
  );
}

function heightHint(height_m: number): string {
  if (height_m < 0) return "buried: quick preview only";
  if (height_m === 0) return "lying: counts as 5 mm";
  return height_m > limits.previewHeight_m ? "raised, base with them" : "lying, to the wire’s middle";
}

function withDiameter(plan: SavedPlan, diameter_mm: number, elementId: string | undefined): SavedPlan {
  if (elementId !== undefined) return withElement(plan, elementId, (element) => ({ ...element, diameter_mm }));
  return { ...plan, elements: plan.elements.map((element) => ({ ...element, diameter_mm })) };
}

/** Whether all elements have one conductor thickness and one kind of radial field. */
export function areAlike(elements: readonly ElementPlan[]): boolean {
  const first = elements[0];
  return elements.every(
    (element) =>
      element.diameter_mm === first!.diameter_mm &&
      element.radials.count === first!.radials.count &&
      element.radials.length_m === first!.radials.length_m &&
      element.radials.diameter_mm === first!.radials.diameter_mm &&
      element.radials.height_m === first!.radials.height_m &&
      element.radials.insulation?.diameter_mm === first!.radials.insulation?.diameter_mm &&
      element.radials.insulation?.relativePermittivity === first!.radials.insulation?.relativePermittivity,
  );
}

function allLike(plan: SavedPlan, model: ElementPlan): SavedPlan {
  const { diameter_mm, radials } = model;
  return { ...plan, elements: plan.elements.map((element) => ({ ...element, diameter_mm, radials })) };
}

function lengthHint(
  element: ElementPlan,
  driven: ElementPlan | undefined,
  wavelength: number,
  other: string | null,
): string {
  const parts = [`${(element.height_m / wavelength).toFixed(3)} λ`, other];
  if (driven) {
    const percent = (element.height_m / driven.height_m - 1) * 100;
    parts[0] = `${Math.abs(percent).toFixed(1)} % ${percent < 0 ? "shorter" : "longer"}`;
  }
  return pieces(...parts);
}

/** Several short facts in a line that breaks between them only. */
function pieces(...parts: readonly (string | null)[]): string {
  return parts
    .filter((part) => part !== null)
    .map((part) => part.replaceAll(" ", "\u00a0"))
    .join(", ");
}

const points = [
  "north",
  "north-north-east",
  "north-east",
  "east-north-east",
  "east",
  "east-south-east",
  "south-east",
  "south-south-east",
  "south",
  "south-south-west",
  "south-west",
  "west-south-west",
  "west",
  "west-north-west",
  "north-west",
  "north-north-west",
] as const;

/** The nearest of the sixteen points of the compass, in words. */
export function pointOfCompass(bearing_deg: number): string {
  return points[Math.round((((bearing_deg % 360) + 360) % 360) / 22.5) % 16]!;
}
