import { ChoiceField } from "./ChoiceField.tsx";

interface Props {
  readonly name: string;
  /** In wavelengths. */
  readonly span: readonly [number, number];
  readonly wavelength: number;
  readonly least_wl: number;
  readonly most_wl: number;
  onChange(span: readonly [number, number]): void;
}

/** From and to of a length, set in lengths and kept in wavelengths. */
export function SpanFields({ name, span: [from, to], wavelength, least_wl, most_wl, onChange }: Props) {
  return (
    <>
      <ChoiceField
        label={`${name} from`}
        kind="length_m"
        value={from * wavelength}
        least={least_wl * wavelength}
        most={to * wavelength}
        hint={`${from.toFixed(3)} λ`}
        onChange={(m) => onChange([m / wavelength, to])}
      />
      <ChoiceField
        label={`${name} to`}
        kind="length_m"
        value={to * wavelength}
        least={from * wavelength}
        most={most_wl * wavelength}
        hint={`${to.toFixed(3)} λ`}
        onChange={(m) => onChange([from, m / wavelength])}
      />
    </>
  );
}
