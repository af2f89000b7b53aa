/** A function of one object that never changes, worked out once for each and forgotten with it. */
export function oncePer<K extends object, V>(work: (of: K) => V): (of: K) => V {
  const known = new WeakMap<K, { readonly value: V }>();
  return (of) => {
    let found = known.get(of);
    if (!found) {
      found = { value: work(of) };
      known.set(of, found);
    }
    return found.value;
  };
}
