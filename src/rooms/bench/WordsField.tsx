import { useId, useState } from "react";
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
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const forget = () => {
    setTyped(null);
    setRefusal(null);
  };
  const commit = () => {
    if (typed === null || typed === value) return forget();
    const against = check?.(typed) ?? null;
    if (against !== null) return setRefusal(against);
    forget();
    onCommit(typed);
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
        value={typed ?? value}
        aria-invalid={refusal !== null}
        aria-describedby={`${id}-hint ${id}-refusal`}
        onChange={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter") commit();
          else if (event.key === "Escape" && typed !== null) {
            event.stopPropagation();
            event.preventDefault();
            forget();
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
