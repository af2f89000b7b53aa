import type { FixtureRow } from "./FixtureRow.ts";

/** One numeric condition of a row; throws when the row does not state it. */
export function condition(row: FixtureRow, name: string): number {
  const value = row.conditions[name];
  if (typeof value !== "number") throw new RangeError(`condition: row ${row.id} has no number "${name}"`);
  return value;
}
