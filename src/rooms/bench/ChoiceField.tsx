interface Props<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly { readonly value: T; readonly label: string }[];
  onChoose(value: T): void;
}

/** One of a list of words. */
export function ChoiceField<T extends string>({ label, value, choices, onChoose }: Props<T>) {
  return (
    <label className="field">
      <span className="field__label">{label}</span>
      <select
        className="field__select"
        value={value}
        onChange={(event) => {
          const chosen = choices.find((choice) => choice.value === event.currentTarget.value);
          if (chosen) onChoose(chosen.value);
        }}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </label>
  );
}
