import type { KeyboardEvent, ReactNode } from "react";
import { formatOtherUnits, formatQuantity } from "./quantity/formatQuantity.ts";
import type { QuantityRules } from "./quantity/judgeQuantity.ts";
import { judgeQuantity, objectionTo } from "./quantity/judgeQuantity.ts";
import type { QuantityContext, QuantityKind } from "./quantity/QuantityKind.ts";
import { quantityTraits } from "./quantity/quantityTraits.ts";
import { stepQuantity } from "./quantity/stepQuantity.ts";
import { TypedField } from "./TypedField.tsx";
import { useTypedText } from "./useTypedText.ts";

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
 * A text field for a quantity with its unit, typed as `useTypedText` says. The arrow keys step the value; with text in
 * the field that can be used, from there.
 */
export function QuantityInput(props: QuantityInputProps) {
  const { label, kind, value, context, onCommit, onSettle, hint, cautionId, labelHidden, disabled } = props;
  const shown = formatQuantity(value, kind, context.units);
  const typing = useTypedText<number>({
    inForce: shown,
    judge: (text) => judgeQuantity(text, kind, context, props),
    take: (next) => {
      if (next !== value) onCommit(next, false);
    },
  });
  const { preview, refusal } = typing;

  const step = (presses: number) => {
    const from = preview?.ok ? preview.value : value;
    const next = stepQuantity(from, presses, kind, context.units);
    const against = objectionTo(next, kind, context, props);
    if (against !== null) return typing.refuse(against);
    typing.forget();
    if (next !== value) onCommit(next, true);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const steps = event.key === "ArrowUp" || event.key === "ArrowDown";
    if (steps && !event.altKey && !event.ctrlKey && !event.metaKey) {
      event.preventDefault();
      step((event.key === "ArrowUp" ? 1 : -1) * (event.shiftKey ? 10 : 1));
    } else {
      typing.onKeyDown(event);
    }
  };

  const secondLine =
    preview?.ok && refusal === null
      ? `reads as ${formatQuantity(preview.value, kind, context.units)}`
      : (hint ?? formatOtherUnits(value, kind, context.units));
  const unitHint = quantityTraits[kind].hint[context.units];

  return (
    <TypedField
      label={label}
      labelHidden={labelHidden}
      text={typing.text}
      refusal={refusal}
      inForce={shown}
      hint={
        <>
          {secondLine}
          <span className="visually-hidden">{unitHint && `, in ${unitHint}`}</span>
        </>
      }
      cautionId={cautionId}
      disabled={disabled}
      onChange={typing.onChange}
      onKeyDown={onKeyDown}
      onBlur={() => {
        typing.finish();
        onSettle?.();
      }}
    />
  );
}
