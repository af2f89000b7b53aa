/** All combinations of one item of each list, the last list running fastest. */
export function combinations<T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] {
  return lists.reduce<readonly (readonly T[])[]>(
    (found, list) => found.flatMap((start) => list.map((item) => [...start, item])),
    [[]],
  );
}
