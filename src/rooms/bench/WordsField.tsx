import { useEffect, useId, useState } from "react";
import "../../ui/quantityField.css";

interface Props {
  readonly label: string;
  readonly value: string;
  readonly most: number;
  readonly type?: "text" | "date" | "time";
  readonly hint?: string;
  /** Anything against what was typed, in one sentence; null when there is nothing. */
  check?(text: string): string | null;
  onCommit(value: string): void;
}

/** A line of words, or a date, that is taken with Enter or on leaving the field; Escape puts back what was there. */
export function WordsField({ label, value, most, type = "text", hint = "", check, onCommit }: Props) {
  const id = useId();
  const [typed, setTyped] = useState(value);
  const [refusal, setRefusal] = useState<string | null>(null);
  useEffect(() => setTyped(value), [value]);
  const commit = () => {
    const against = typed === value ? null : (check?.(typed) ?? null);
    setRefusal(against);
    if (against === null && typed !== value) onCommit(typed);
  };
  return (
    <div className="quantity" data-refused={refusal !== null || undefined}>
      <label className="quantity-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="quantity-input"
        type={type}
        autoComplete="off"
        maxLength={type === "text" ? most : undefined}
        value={typed}
        aria-invalid={refusal !== null}
        aria-describedby={`${id}-hint ${id}-refusal`}
        onChange={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter") commit();
          else if (event.key === "Escape" && typed !== value) {
            event.stopPropagation();
            event.preventDefault();
            setTyped(value);
            setRefusal(null);
          }
        }}
        onBlur={commit}
      />
      <span className="quantity-hint" id={`${id}-hint`}>
        {hint}
      </span>
      <span className="quantity-refusal" id={`${id}-refusal`} aria-live="polite">
        {refusal}
      </span>
    </div>
  );
}
