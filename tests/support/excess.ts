import type { FixtureRow } from "./FixtureRow.ts";

type Found = number | { readonly re: number; readonly im: number } | readonly number[];

const parts = (v: Found): readonly number[] => (typeof v === "number" ? [v] : "re" in v ? [v.re, v.im] : v);

/**
 * Largest |found − value| over its tolerance among the parts of a row: at most 1 where the row is met, NaN where a part
 * is not a number. Throws where the row states no tolerance, or the parts do not pair off.
 */
export function excess({ id, value, tolerance }: FixtureRow, found: Found): number {
  const want = parts(value);
  const got = parts(found);
  if (want.length !== got.length) throw new RangeError(`excess: row ${id} has ${want.length} parts, not ${got.length}`);
  const allowed = (i: number): number => {
    const part = i === 0 ? "re" : "im";
    const pick = (t: number | readonly number[] | undefined) => (t === undefined || typeof t === "number" ? t : t[i]);
    const abs = pick(tolerance.abs) ?? pick(tolerance[`abs_${part}`]);
    const rel = pick(tolerance.rel) ?? pick(tolerance[`rel_${part}`]);
    const limit = abs ?? (rel === undefined ? undefined : rel * Math.abs(want[i]!));
    if (!(limit !== undefined && limit > 0)) throw new RangeError(`excess: row ${id} has no tolerance`);
    return limit;
  };
  const each = want.map((w, i) => Math.abs(got[i]! - w) / allowed(i));
  return each.some(Number.isNaN) ? Number.NaN : Math.max(...each);
}
