/** A map that keeps only the entries used last. */
export interface RecentlyUsed<T> {
  has(key: string): boolean;
  get(key: string): T | undefined;
  set(key: string, value: T): void;
}

export function recentlyUsed<T>(most: number): RecentlyUsed<T> {
  // A Map lists its keys in the order they were put in: the first is the one unused for longest.
  const kept = new Map<string, T>();
  const set = (key: string, value: T) => {
    kept.delete(key);
    kept.set(key, value);
    const oldest = kept.keys().next();
    if (kept.size > most && !oldest.done) kept.delete(oldest.value);
  };
  return {
    has: (key) => kept.has(key),
    get(key) {
      const found = kept.get(key);
      if (found !== undefined) set(key, found);
      return found;
    },
    set,
  };
}
