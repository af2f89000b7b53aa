interface Props {
  readonly main: string;
  /** Goes on where `main` ends, for those who do not see what stands beside it. */
  readonly said?: string;
  /** The value in the other system of units. */
  readonly other: string | null;
}

/** What a length is in wavelengths or per cent, and in other units where the column is wide enough: one line in any case. */
export function FieldFacts({ main, said, other }: Props) {
  return (
    <span className="yard-facts">
      <span>
        {main}
        {said && <span className="visually-hidden"> {said}</span>}
      </span>
      {other !== null && <span>{`,\u00a0${other}`}</span>}
    </span>
  );
}
