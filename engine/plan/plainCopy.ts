import { failed, ok, type Problem, type Result } from "../result.ts";
import { childPath } from "./childPath.ts";
import { limits } from "./limits.ts";

/** Data as a plan file can hold it. */
export type PlainData = null | boolean | number | string | readonly PlainData[] | { readonly [key: string]: PlainData };

/**
 * Copies anything into plain data, so that what is checked is what is used: a getter or proxy cannot answer twice.
 * Keys keep their order; fields holding `undefined` are left out and −0 becomes 0, as writing to a file would do.
 * Numbers that are not finite are copied: the caller knows the field's name and says it better.
 *
 * Problems: a function, symbol, bigint or class instance inside; a list with holes; data nested deeper or larger than
 * `limits` (which also ends circles); anything that throws while it is read.
 */
export function plainCopy(candidate: unknown): Result<PlainData> {
  const problems: Problem[] = [];
  let tooDeep = false;
  const budget = { values: limits.values as number, characters: limits.characters as number };

  const copy = (value: unknown, where: string, depth: number): PlainData => {
    if (typeof value === "string") budget.characters -= value.length;
    budget.values--;
    if (budget.values < 0 || budget.characters < 0) return null;
    if (value === null || typeof value === "boolean" || typeof value === "string") return value;
    if (typeof value === "number") return value === 0 ? 0 : value;
    if (typeof value !== "object") {
      problems.push(notPlain(where, value === undefined ? "nothing" : `a ${typeof value}`));
      return null;
    }
    if (depth >= limits.depth) {
      // Once is enough: a circle meets this on every way round.
      if (!tooDeep) problems.push(nestedTooDeep(where));
      tooDeep = true;
      return null;
    }
    if (Array.isArray(value)) {
      if (value.length > budget.values) {
        budget.values = -1;
        return null;
      }
      const list: PlainData[] = [];
      for (let i = 0; i < value.length && budget.values >= 0; i++)
        list.push(copy(value[i], `${where}[${i}]`, depth + 1));
      return list;
    }
    // Plain objects of any realm: no prototype, or one that has none itself.
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== null && Object.getPrototypeOf(prototype) !== null) {
      problems.push(notPlain(where, "a special object"));
      return null;
    }
    const entries: [string, PlainData][] = [];
    for (const key of Object.keys(value)) {
      if (budget.values < 0) break;
      budget.characters -= key.length;
      const held = (value as Record<string, unknown>)[key];
      if (held !== undefined) entries.push([key, copy(held, childPath(where, key), depth + 1)]);
    }
    // Not by assignment: a key "__proto__" must stay a key.
    return Object.fromEntries(entries);
  };

  // The one guard in the engine: what is read here may be a proxy or have getters, and may throw whatever it likes.
  let copied: PlainData = null;
  try {
    copied = copy(candidate, "", 0);
  } catch {
    return failed({
      code: "unreadable",
      where: "",
      message: "The plan cannot be read: reading one of its fields fails.",
    });
  }
  if (budget.values < 0 || budget.characters < 0)
    return failed({
      code: "too-large",
      where: "",
      message: `The plan holds more than ${limits.values} values or ${limits.characters} characters, the most this page takes.`,
    });
  return problems.length > 0 ? failed(...problems) : ok(copied);
}

function notPlain(where: string, what: string): Problem {
  return {
    code: "not-plain-data",
    where,
    message: `Here stands ${what}; a plan holds only numbers, texts, true or false, lists and named fields.`,
  };
}

function nestedTooDeep(where: string): Problem {
  return {
    code: "too-deep",
    where,
    message: `The data go round in a circle or are nested more than ${limits.depth} deep here.`,
  };
}
