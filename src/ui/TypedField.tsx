import type { KeyboardEvent, ReactNode } from "react";
import { useId } from "react";
import "./quantityField.css";

export interface TypedFieldProps {
  readonly label: string;
  /** For a label that is shown elsewhere, such as the heading of a column. */
  readonly labelHidden?: boolean | undefined;
  readonly type?: "text" | "date" | "time";
  /** Words, which a browser may help to spell. */
  readonly words?: boolean;
  readonly text: string;
  /** Why what was typed cannot be used; null when it can. */
  readonly refusal: string | null;
  /** What goes on counting meanwhile; absent when nothing does. */
  readonly inForce?: string | undefined;
  /** A second line in small type. */
  readonly hint: ReactNode;
  /** Id of a caution about the value in force that stands near the field; not an error. */
  readonly cautionId?: string | undefined;
  readonly most?: number | undefined;
  readonly disabled?: boolean | undefined;
  onChange(text: string): void;
  onKeyDown(event: KeyboardEvent): void;
  onBlur(): void;
}

/** A label, a line to type in, a hint, and the reason when what was typed cannot be used. */
export function TypedField(props: TypedFieldProps) {
  const { label, labelHidden, type = "text", text, refusal, inForce, hint, cautionId } = props;
  const id = useId();
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
          type={type}
          autoComplete="off"
          autoCapitalize={props.words ? undefined : "off"}
          spellCheck={props.words ?? false}
          enterKeyHint="done"
          value={text}
          maxLength={type === "text" ? props.most : undefined}
          disabled={props.disabled}
          aria-invalid={refusal !== null}
          aria-describedby={describedBy.filter(Boolean).join(" ")}
          onChange={(event) => props.onChange(event.currentTarget.value)}
          onKeyDown={props.onKeyDown}
          onBlur={props.onBlur}
        />
      </span>
      <span className="quantity-hint" id={`${id}-hint`}>
        {hint}
      </span>
      <span className="quantity-refusal" id={`${id}-refusal`} aria-live="polite">
        {refusal !== null && `${refusal}${inForce === undefined ? "" : ` Still in force: ${inForce}.`}`}
      </span>
    </div>
  );
}
