import { wavelength_m } from "../../../engine/index.ts";
import { usePlan } from "../../store/usePlan.ts";
import { useSettings } from "../../store/useSettings.ts";
import { formatQuantity } from "../../ui/quantity/formatQuantity.ts";
import { judgeQuantity, type QuantityRules } from "../../ui/quantity/judgeQuantity.ts";
import type { QuantityKind } from "../../ui/quantity/QuantityKind.ts";
import { quantityTraits } from "../../ui/quantity/quantityTraits.ts";
import { TypedField } from "../../ui/TypedField.tsx";
import { useTypedText } from "../../ui/useTypedText.ts";

interface Props extends QuantityRules {
  readonly label: string;
  readonly kind: QuantityKind;
  /** Undefined: not taken. */
  readonly value: number | undefined;
  readonly hint?: string;
  onCommit(value: number | undefined): void;
}

/** As `QuantityInput`, for a figure that may have been left out: an empty field is an answer. */
export function BlankableField({ label, kind, value, hint, onCommit, ...rules }: Props) {
  const units = useSettings((s) => s.units);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const context = { units, wavelength_m: wavelength_m(frequency_MHz) };
  const shown = value === undefined ? undefined : formatQuantity(value, kind, units);
  const typing = useTypedText<number | undefined>({
    inForce: shown ?? "",
    judge: (text) => (text.trim() === "" ? { ok: true, value: undefined } : judgeQuantity(text, kind, context, rules)),
    take: (next) => {
      if (next !== value) onCommit(next);
    },
  });
  return (
    <TypedField
      label={label}
      text={typing.text}
      refusal={typing.refusal}
      inForce={shown}
      hint={hint ?? quantityTraits[kind].hint[units]}
      onChange={typing.onChange}
      onKeyDown={typing.onKeyDown}
      onBlur={typing.finish}
    />
  );
}
