import { memo, useId, useMemo, useState } from "react";
import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";
import { drivenOf, reflectorOf, spacingOf, wavelength_m } from "../../../engine/index.ts";
import { HeadingField, LengthField, SpacingField } from "./ArrayFields.tsx";
import { areAlike } from "./areAlike.ts";
import { elementName } from "./elementName.ts";
import type { GeometryWarning, WarnedField } from "./geometryWarnings.ts";
import { geometryWarnings, isOfArray } from "./geometryWarnings.ts";
import { headingOf } from "./heading.ts";
import { RadialDetails } from "./radials/RadialDetails.tsx";
import type { YardEdits } from "./useYardEdits.ts";
import { WireFields } from "./WireFields.tsx";

interface Props {
  readonly plan: SavedPlan;
  readonly edits: YardEdits;
  /** Id of the note that tells the first caution about the array; the others are told here. */
  readonly noteId: string;
}

/**
 * The measures of the array in figures. A field says which caution concerns it; those that no note above tells stand
 * below everything, where they move nothing. Each field draws itself anew only when what it says changes: a drag
 * changes one of them.
 */
export const YardFields = memo(function YardFields({ plan, edits, noteId }: Props) {
  const id = useId();
  const [wantsAlike, setWantsAlike] = useState(true);

  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  const spacing_m = spacingOf(plan);
  const wavelength = wavelength_m(plan.frequency_MHz);
  const several = plan.elements.length > 1;
  const isAlike = several && wantsAlike && areAlike(plan.elements);

  const warnings = useMemo(() => geometryWarnings(plan), [plan]);
  const noted = warnings.find(isOfArray);
  const below = warnings.filter((warning) => warning !== noted);
  const arrayCaution = (field: WarnedField, elementId?: string) => {
    if (noted && concerning([noted], elementId).includes(field)) return noteId;
    return concerning(below, elementId).includes(field) ? `${id}-below` : undefined;
  };

  return (
    <div className="yard-fields">
      <div className="yard-array">
        {spacing_m !== undefined && (
          <SpacingField
            edits={edits}
            spacing_m={spacing_m}
            wavelength={wavelength}
            cautionId={arrayCaution("spacing")}
          />
        )}
        <HeadingField edits={edits} heading_deg={headingOf(plan)} />
        {plan.elements.map((element) => (
          <LengthField
            key={element.id}
            edits={edits}
            elementId={element.id}
            name={elementName(plan, element)}
            height_m={element.height_m}
            driven_m={element.id === reflector?.id ? driven?.height_m : undefined}
            wavelength={wavelength}
            cautionId={arrayCaution("height", element.id)}
          />
        ))}
      </div>
      <section className="yard-made" aria-labelledby={`${id}-ground`}>
        <div className="yard-group">
          <h3 id={`${id}-ground`}>Wire and radials</h3>
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
          <RadialDetails edits={edits} />
        </div>
        <div className="yard-columns" data-several={(several && !isAlike) || undefined}>
          {(isAlike || !several ? plan.elements.slice(0, 1) : plan.elements).map((element) => (
            <WireFields
              key={isAlike ? "all" : element.id}
              edits={edits}
              diameter_mm={element.diameter_mm}
              radials={element.radials}
              elementId={isAlike ? undefined : element.id}
              isForAll={isAlike}
              title={isAlike || !several ? undefined : elementName(plan, element)}
              wavelength={wavelength}
              cautionId={`${id}-below`}
              warned={concerning(warnings, isAlike ? undefined : element.id).join(" ")}
            />
          ))}
        </div>
        <Cautions id={`${id}-below`} told={told(below)} />
      </section>
    </div>
  );
});

/** `told`: one caution a line. */
const Cautions = memo(function Cautions({ id, told }: { readonly id: string; readonly told: string }) {
  if (told === "") return null;
  return (
    <ul className="yard-cautions" id={id}>
      {told.split("\n").map((message) => (
        <li key={message}>{message}</li>
      ))}
    </ul>
  );
});

function told(warnings: readonly GeometryWarning[]): string {
  return [...new Set(warnings.map((warning) => warning.message))].join("\n");
}

/** The fields that something is said about, for one element or for all. */
function concerning(warnings: readonly GeometryWarning[], elementId?: string): WarnedField[] {
  return warnings
    .filter((w) => elementId === undefined || w.elementId === undefined || w.elementId === elementId)
    .map((w) => w.field);
}

function allLike(plan: SavedPlan, model: ElementPlan): SavedPlan {
  const { diameter_mm, radials } = model;
  return { ...plan, elements: plan.elements.map((element) => ({ ...element, diameter_mm, radials })) };
}
