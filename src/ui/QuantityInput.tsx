import type { KeyboardEvent, ReactNode } from "react";
import { useId, useState } from "react";
import { formatOtherUnits, formatQuantity } from "./quantity/formatQuantity.ts";
import type { QuantityRules } from "./quantity/judgeQuantity.ts";
import { judgeQuantity, objectionTo } from "./quantity/judgeQuantity.ts";
import type { QuantityContext, QuantityKind } from "./quantity/QuantityKind.ts";
import { quantityTraits } from "./quantity/quantityTraits.ts";
import { stepQuantity } from "./quantity/stepQuantity.ts";
import "./quantityField.css";

export interface QuantityInputProps extends QuantityRules {
  readonly label: string;
  readonly kind: QuantityKind;
  /** In the unit the kind ends in. */
  readonly value: number;
  readonly context: QuantityContext;
  /** `stepped`: by an arrow key, to be merged with its neighbours into one undo step. */
  readonly onCommit: (value: number, stepped: boolean) => void;
  /** The run of steps is over: the field lost focus. */
  readonly onSettle?: () => void;
  /** A second line in small type; absent: the value in the other system of units. */
  readonly hint?: ReactNode;
  /** Id of a caution about the value in force that stands near the field; not an error. */
  readonly cautionId?: string | undefined;
  /** For a label that is shown elsewhere, such as the heading of a column. */
  readonly labelHidden?: boolean;
  readonly disabled?: boolean;
}

/**
 * A text field for a quantity with its unit. What is typed stays as typed until Enter or leaving the field; text that
 * cannot be used stays where it is with the reason under it, and the value in force does not change. Escape puts the
 * value in force back. A field that was looked at and left alone commits nothing.
 */
export function QuantityInput(props: QuantityInputProps) {
  const { label, kind, value, context, onCommit, onSettle, hint, cautionId, labelHidden, disabled } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);

  const shown = formatQuantity(value, kind, context.units);
  const untouched = typed === null || typed === shown;
  const preview = untouched ? null : judgeQuantity(typed, kind, context, props);
  const forget = () => {
    setTyped(null);
    setRefusal(null);
  };

  const commit = () => {
    if (untouched || preview === null) return forget();
    if (!preview.ok) return setRefusal(preview.message);
    forget();
    if (preview.value !== value) onCommit(preview.value, false);
  };

  const step = (presses: number) => {
    const from = preview?.ok ? preview.value : value;
    const next = stepQuantity(from, presses, kind, context.units);
    const against = objectionTo(next, kind, context, props);
    if (against !== null) return setRefusal(against);
    forget();
    if (next !== value) onCommit(next, true);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Enter") {
      event.preventDefault();
      commit();
    } else if (event.key === "Escape" && (typed !== null || refusal !== null)) {
      event.stopPropagation();
      forget();
    } else if (
      (event.key === "ArrowUp" || event.key === "ArrowDown") &&
      !event.altKey &&
      !event.ctrlKey &&
      !event.metaKey
    ) {
      event.preventDefault();
      step((event.key === "ArrowUp" ? 1 : -1) * (event.shiftKey ? 10 : 1));
    }
  };

  const onChange = (text: string) => {
    setTyped(text);
    // A message that has become untrue goes at once; a new one waits until the person has finished.
    if (refusal !== null && judgeQuantity(text, kind, context, props).ok) setRefusal(null);
  };

  const secondLine =
    preview?.ok && refusal === null
      ? `reads as ${formatQuantity(preview.value, kind, context.units)}`
      : (hint ?? formatOtherUnits(value, kind, context.units));
  const unitHint = quantityTraits[kind].hint[context.units];
  const describedBy = [`${id}-hint`, refusal !== null && `${id}-refusal`, cautionId];

  return (
    <div
      className="quantity"
      data-refused={refusal !== null || undefined}
      data-caution={cautionId !== undefined || undefined}
    >
      <label className={labelHidden ? "visually-hidden" : "quantity-label"} htmlFor={id}>
        {label}
      </label>
      <span className="quantity-box">
        <input
          id={id}
          className="quantity-input"
          type="text"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="done"
          value={typed ?? shown}
          disabled={disabled}
          aria-invalid={refusal !== null}
          aria-describedby={describedBy.filter(Boolean).join(" ")}
          onChange={(event) => onChange(event.currentTarget.value)}
          onKeyDown={onKeyDown}
          onBlur={() => {
            commit();
            onSettle?.();
          }}
        />
      </span>
      <span className="quantity-hint" id={`${id}-hint`}>
        {secondLine}
        <span className="visually-hidden">{unitHint && `, in ${unitHint}`}</span>
      </span>
      <span className="quantity-refusal" id={`${id}-refusal`} aria-live="polite">
        {refusal !== null && `${refusal} Still in force: ${shown}.`}
      </span>
    </div>
  );
}
