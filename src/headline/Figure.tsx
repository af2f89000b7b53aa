import { memo } from "react";

interface Props {
  readonly value: string;
  readonly unit: string;
  readonly label: string;
  readonly isHot: boolean;
  readonly caution: string | null;
  /** Numbers of the notes that weaken the figure; "" for none. */
  readonly notes: string;
}

/** One of the figures at the top of the page. */
export const Figure = memo(function Figure({ value, unit, label, isHot, caution, notes }: Props) {
  return (
    <div className={isHot ? "figure figure--hot" : "figure"}>
      <dt className="figure__label">
        {label}
        {notes !== "" && (
          <sup className="figure__notes">
            <span className="visually-hidden"> (see note </span>
            {notes}
            <span className="visually-hidden">)</span>
          </sup>
        )}
        {caution && <span className="figure__caution"> ({caution})</span>}
      </dt>
      <dd className="figure__value">
        {value}
        <span className="figure__unit"> {unit}</span>
      </dd>
    </div>
  );
});
