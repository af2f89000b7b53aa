import { useId } from "react";

interface Props<T extends string> {
  readonly label: string;
  readonly isLabelShown?: boolean;
  readonly choices: readonly { readonly value: T; readonly label: string }[];
  readonly value: T;
  onChange(value: T): void;
}

/** A few choices in a row, one of them taken: radio buttons to the keyboard and to a screen reader. */
export function Switch<T extends string>({ label, isLabelShown = true, choices, value, onChange }: Props<T>) {
  const name = useId();
  return (
    <fieldset className="field">
      <legend className={isLabelShown ? "field__label" : "visually-hidden"}>{label}</legend>
      <div className="switch">
        {choices.map((choice) => (
          <label key={choice.value} className="switch__choice">
            <input
              type="radio"
              name={name}
              value={choice.value}
              checked={choice.value === value}
              onChange={() => onChange(choice.value)}
            />
            {choice.label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
