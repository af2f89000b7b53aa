import type { FixtureRow } from "./FixtureRow.ts";

/** The rows of a fixture by their ids, in that order; throws on an id that is not there. */
export function rowsOf(fixture: unknown, ...ids: readonly string[]): FixtureRow[] {
  const rows = fixture as readonly FixtureRow[];
  return ids.map((id) => {
    const row = rows.find((r) => r.id === id);
    if (!row) throw new RangeError(`rowsOf: no row ${id}`);
    return row;
  });
}
