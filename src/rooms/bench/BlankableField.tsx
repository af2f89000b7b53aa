import { useId, useState } from "react";
import { wavelength_m } from "../../../engine/index.ts";
import { usePlan } from "../../store/usePlan.ts";
import { useSettings } from "../../store/useSettings.ts";
import { formatQuantity } from "../../ui/quantity/formatQuantity.ts";
import { judgeQuantity, type QuantityRules } from "../../ui/quantity/judgeQuantity.ts";
import type { QuantityKind } from "../../ui/quantity/QuantityKind.ts";
import { quantityTraits } from "../../ui/quantity/quantityTraits.ts";
import "../../ui/quantityField.css";

interface Props extends QuantityRules {
  readonly label: string;
  readonly kind: QuantityKind;
  /** Undefined: not taken. */
  readonly value: number | undefined;
  readonly hint?: string;
  onCommit(value: number | undefined): void;
}

/**
 * As `QuantityInput`, for a figure that may have been left out: an empty field is an answer. What cannot be used stays
 * as typed with the reason under it, and the value in force does not change.
 */
export function BlankableField({ label, kind, value, hint, onCommit, ...rules }: Props) {
  const id = useId();
  const units = useSettings((s) => s.units);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const shown = value === undefined ? "" : formatQuantity(value, kind, units);
  const context = { units, wavelength_m: wavelength_m(frequency_MHz) };

  const forget = () => {
    setTyped(null);
    setRefusal(null);
  };
  const commit = () => {
    if (typed === null || typed === shown) return forget();
    if (typed.trim() === "") {
      forget();
      return onCommit(undefined);
    }
    const judged = judgeQuantity(typed, kind, context, rules);
    if (!judged.ok) return setRefusal(judged.message);
    forget();
    if (judged.value !== value) onCommit(judged.value);
  };
  const unit = quantityTraits[kind].hint[units];
  return (
    <div className="quantity" data-refused={refusal !== null || undefined}>
      <label className="quantity-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="quantity-input"
        type="text"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        value={typed ?? shown}
        aria-invalid={refusal !== null}
        aria-describedby={`${id}-hint ${id}-refusal`}
        onChange={(event) => {
          const text = event.currentTarget.value;
          setTyped(text);
          if (refusal !== null && (text.trim() === "" || judgeQuantity(text, kind, context, rules).ok))
            setRefusal(null);
        }}
        onKeyDown={(event) => {
          if (event.key === "Enter") commit();
          else if (event.key === "Escape" && (typed !== null || refusal !== null)) {
            event.stopPropagation();
            event.preventDefault();
            forget();
          }
        }}
        onBlur={commit}
      />
      <span className="quantity-hint" id={`${id}-hint`}>
        {hint ?? unit}
      </span>
      <span className="quantity-refusal" id={`${id}-refusal`} aria-live="polite">
        {refusal !== null && `${refusal}${value === undefined ? "" : ` Still in force: ${shown}.`}`}
      </span>
    </div>
  );
}
