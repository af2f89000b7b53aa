interface Props {
  readonly isFed: boolean;
}

/** Fed: a filled dot. Unfed: an open ring. */
export function ElementMark({ isFed }: Props) {
  return <circle className={isFed ? "yard-dot" : "yard-ring"} r={isFed ? 7 : 6} />;
}
