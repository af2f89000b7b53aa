import { memo } from "react";

interface Line {
  readonly id: string;
  readonly d: string;
}

interface Props {
  readonly rules: readonly Line[];
  readonly spokes: readonly Line[];
}

/** The rules and spokes of a chart's sheet. They stay while the pattern moves over them. */
export const SheetLines = memo(function SheetLines({ rules, spokes }: Props) {
  return (
    <>
      {rules.map((r) => (
        <path key={r.id} className="tr-grid" d={r.d} />
      ))}
      {spokes.map((r) => (
        <path key={r.id} className="tr-spoke" d={r.d} />
      ))}
    </>
  );
});
