/** An id that none of a list's has yet: "entry-3". */
export function freshId(stem: string, taken: readonly { readonly id: string }[]): string {
  const ids = new Set(taken.map((one) => one.id));
  let n = taken.length + 1;
  while (ids.has(`${stem}-${n}`)) n++;
  return `${stem}-${n}`;
}
