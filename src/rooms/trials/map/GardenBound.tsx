import { limits } from "../../../../engine/index.ts";
import { ChoiceField } from "../ChoiceField.tsx";

interface Props {
  readonly label: string;
  /** null: no bound. */
  readonly value: number | null;
  /** What it begins at when it is switched on. */
  readonly first: number;
  onChange(value: number | null): void;
}

/** A bound that can be there or not. */
export function GardenBound({ label, value, first, onChange }: Props) {
  return (
    <div className="tl-bound">
      <label className="check">
        <input
          type="checkbox"
          checked={value !== null}
          onChange={(event) => onChange(event.currentTarget.checked ? Math.round(first * 10) / 10 : null)}
        />
        {label}
      </label>
      {value !== null && (
        <ChoiceField
          label="at most"
          kind="length_m"
          value={value}
          least={0.1}
          most={limits.position_m}
          onChange={onChange}
        />
      )}
    </div>
  );
}
