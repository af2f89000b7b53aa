import { memo } from "react";
import { limits, withElementHeight, withSpacing } from "../../../engine/index.ts";
import { useSettings } from "../../store/useSettings.ts";
import { QuantityField } from "../../ui/QuantityField.tsx";
import { formatOtherUnits } from "../../ui/quantity/formatQuantity.ts";
import { FieldFacts } from "./FieldFacts.tsx";
import { fieldHand } from "./fieldHand.ts";
import { withHeading } from "./heading.ts";
import { pointOfCompass } from "./pointOfCompass.ts";
import type { YardEdits } from "./useYardEdits.ts";

interface FieldProps {
  readonly edits: YardEdits;
  readonly wavelength: number;
  readonly cautionId?: string | undefined;
}

/** How far the reflector stands behind the driven. */
export const SpacingField = memo(function SpacingField(p: FieldProps & { readonly spacing_m: number }) {
  const units = useSettings((s) => s.units);
  const { spacing_m } = p;
  return (
    <QuantityField
      label="spacing"
      kind="length_m"
      value={spacing_m}
      least={0}
      most={limits.position_m}
      hint={
        <FieldFacts
          main={`${(spacing_m / p.wavelength).toFixed(3)} λ`}
          other={formatOtherUnits(spacing_m, "length_m", units)}
        />
      }
      cautionId={p.cautionId}
      {...fieldHand(p.edits, (value) => (plan) => withSpacing(plan, value), "move the reflector", "field spacing")}
    />
  );
});

/** Which way the beam looks. */
export const HeadingField = memo(function HeadingField(p: { readonly edits: YardEdits; readonly heading_deg: number }) {
  return (
    <QuantityField
      label="heading, true"
      kind="bearing_deg"
      value={p.heading_deg}
      hint={pointOfCompass(p.heading_deg)}
      {...fieldHand(p.edits, (value) => (plan) => withHeading(plan, value), "turn the beam", "field heading")}
    />
  );
});

interface LengthProps extends FieldProps {
  readonly elementId: string;
  readonly name: string;
  readonly height_m: number;
  /** The driven's length, where this one is told against it. */
  readonly driven_m: number | undefined;
}

/** The length of one element's upright. */
export const LengthField = memo(function LengthField(p: LengthProps) {
  const units = useSettings((s) => s.units);
  const { elementId, name, height_m, driven_m, wavelength } = p;
  return (
    <QuantityField
      label={`${name} length`}
      kind="length_m"
      value={height_m}
      least={limits.height_wl.least * wavelength}
      most={Math.min(limits.height_wl.most * wavelength, limits.length_m)}
      hint={
        <FieldFacts
          main={driven_m === undefined ? `${(height_m / wavelength).toFixed(3)} λ` : overWords(height_m, driven_m)}
          {...(driven_m !== undefined ? { said: "on the driven" } : {})}
          other={formatOtherUnits(height_m, "length_m", units)}
        />
      }
      cautionId={p.cautionId}
      {...(driven_m !== undefined ? { percentOver: { value: driven_m, name: "driven" } } : {})}
      {...fieldHand(
        p.edits,
        (value) => (plan) => withElementHeight(plan, elementId, value),
        `change the ${name} length`,
        `field height ${elementId}`,
      )}
    />
  );
});

function overWords(height_m: number, driven_m: number): string {
  const percent = (height_m / driven_m - 1) * 100;
  return `${percent < 0 ? "−" : "+"}${Math.abs(percent).toFixed(1)} %`;
}
