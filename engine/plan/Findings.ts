import type { Problem } from "../result.ts";
import { childPath } from "./childPath.ts";
import type { PlainData } from "./plainCopy.ts";

export type Fields = { readonly [key: string]: PlainData };

/** What a number has to be. `unit` stands after numbers in messages; `because` says what a limit comes from. */
export interface NumberRule {
  readonly least?: number;
  readonly most?: number;
  /** The least (or 0) itself is not allowed. */
  readonly above?: number;
  readonly whole?: boolean;
  readonly unit?: string;
  readonly because?: string;
}

/**
 * Collects problems while fields are read. Every reader gives the value when it is usable and undefined when it is not
 * (and has then noted why), so a check runs on to the end and rules between fields apply only where both sides stand.
 */
export class Findings {
  readonly problems: Problem[] = [];

  add(code: string, where: string, message: string): void {
    this.problems.push({ code, where, message });
  }

  /** @param name the field in plain words, such as "The height of element 2" */
  number(from: Fields, key: string, where: string, name: string, rule: NumberRule = {}): number | undefined {
    const path = childPath(where, key);
    const value = from[key];
    const unit = rule.unit === undefined ? "" : ` ${rule.unit}`;
    if (value === undefined) return this.#missing(path, name, `a number${unit && ` in${unit}`}`);
    if (typeof value !== "number") return this.#wrongType(path, name, value, "a number");
    if (!Number.isFinite(value)) {
      this.add("not-finite", path, `${name} is ${value}; it must be a finite number.`);
      return undefined;
    }
    if (rule.whole && !Number.isInteger(value)) {
      this.add("not-whole", path, `${name} is ${plain(value)}; it must be a whole number.`);
      return undefined;
    }
    const { least = -Infinity, most = Infinity, above = -Infinity } = rule;
    if (value >= least && value <= most && value > above) return value;
    const low =
      above >= least ? `above ${plain(above)}${unit}` : least > -Infinity ? `at least ${plain(least)}${unit}` : "";
    const high = most < Infinity ? `at most ${plain(most)}${unit}` : "";
    const because = rule.because === undefined ? "" : ` (${rule.because})`;
    this.add(
      "out-of-range",
      path,
      `${name} is ${plain(value)}${unit}; it must be ${[low, high].filter(Boolean).join(" and ")}${because}.`,
    );
    return undefined;
  }

  text(from: Fields, key: string, where: string, name: string, most: number): string | undefined {
    const path = childPath(where, key);
    const value = from[key];
    if (value === undefined) return this.#missing(path, name, "a text");
    if (typeof value !== "string") return this.#wrongType(path, name, value, "a text");
    if (value.length <= most) return value;
    this.add("too-long", path, `${name} is ${value.length} characters long; at most ${most} are kept.`);
    return undefined;
  }

  choice<T extends PlainData>(
    from: Fields,
    key: string,
    where: string,
    name: string,
    choices: readonly T[],
  ): T | undefined {
    const path = childPath(where, key);
    const value = from[key];
    const listed = choices.map((choice) => JSON.stringify(choice)).join(", ");
    if (value === undefined) return this.#missing(path, name, `one of ${listed}`);
    const chosen = choices.find((choice) => choice === value);
    if (chosen === undefined)
      this.add("unknown-choice", path, `${name} is ${describe(value)}; it must be one of ${listed}.`);
    return chosen;
  }

  fields(value: PlainData | undefined, path: string, name: string): Fields | undefined {
    if (value === undefined) return this.#missing(path, name, "a group of named fields");
    if (isFields(value)) return value;
    return this.#wrongType(path, name, value, "a group of named fields");
  }

  list(value: PlainData | undefined, path: string, name: string): readonly PlainData[] | undefined {
    if (value === undefined) return this.#missing(path, name, "a list");
    if (Array.isArray(value)) return value;
    return this.#wrongType(path, name, value, "a list");
  }

  #missing(path: string, name: string, wanted: string): undefined {
    this.add("missing", path, `${name} is missing; it must be ${wanted}.`);
    return undefined;
  }

  #wrongType(path: string, name: string, value: PlainData, wanted: string): undefined {
    this.add("wrong-type", path, `${name} is ${describe(value)}; it must be ${wanted}.`);
    return undefined;
  }
}

export function isFields(value: PlainData | undefined): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A value as a message shows it: short, and told apart from a number in quotes. */
export function describe(value: PlainData): string {
  if (typeof value === "string")
    return value.length > 40 ? `${JSON.stringify(value.slice(0, 40))}…` : JSON.stringify(value);
  if (typeof value === "number") return plain(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return typeof value === "object" && value !== null
    ? "a group of fields"
    : value === null
      ? "empty (null)"
      : `${value}`;
}

/** A number to at most six figures: enough to recognise what was typed, no rounding noise. */
export function plain(value: number): string {
  return `${Number(value.toPrecision(6))}`;
}
