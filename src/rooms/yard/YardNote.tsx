interface Props {
  /** Why the last edit was not carried out. */
  readonly refused: string | null;
  /** For the fields that the caution concerns. */
  readonly cautionId: string;
  readonly caution: string | undefined;
  /** Cautions of the same kind that stand below. */
  readonly more: number;
  /** Said where there is nothing against the plan. */
  readonly otherwise: string;
}

/**
 * What is to be said under the drawings, the weightiest first. The room for it is there in any case: what stands below
 * must not move away from a hand that drags, when a caution comes or goes.
 */
export function YardNote({ refused, cautionId, caution, more, otherwise }: Props) {
  return (
    <div className="yard-note">
      <output className="yard-refused">{refused}</output>
      {caution !== undefined && (
        <p className={refused === null ? "yard-caution" : "visually-hidden"} id={cautionId}>
          {caution}
          {more > 0 && ` (${more} more below)`}
        </p>
      )}
      {caution === undefined && refused === null && <p className="yard-currents">{otherwise}</p>}
    </div>
  );
}
