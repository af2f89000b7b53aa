import { numberOf } from "./numberOf.ts";
import { defaultOptions, type FrequencyUnit, type PairFormat, type TouchstoneOptions } from "./Touchstone.ts";

const units: Readonly<Record<string, FrequencyUnit>> = { hz: "Hz", khz: "kHz", mhz: "MHz", ghz: "GHz" };
const formats: Readonly<Record<string, PairFormat>> = { ri: "RI", ma: "MA", db: "DB" };

/**
 * Reads an option line, "# MHz S RI R 50": its parts in any order and case, each at most once, those left out as
 * `defaultOptions` has them.
 *
 * @param text from the "#" on, without its comment
 * @param complain told what is wrong with it
 */
export function readOptionLine(text: string, complain: (code: string, message: string) => void): TouchstoneOptions {
  const words = text.slice(1).split(/\s+/).filter(Boolean);
  let options = defaultOptions;
  const seen = new Set<string>();
  const take = (kind: string, part: Partial<TouchstoneOptions>) => {
    if (seen.has(kind)) complain("twice", `the option line states the ${kind} twice`);
    seen.add(kind);
    options = { ...options, ...part };
  };
  for (let w = 0; w < words.length; w++) {
    const word = words[w]!;
    const lower = word.toLowerCase();
    const unit = Object.hasOwn(units, lower) ? units[lower] : undefined;
    const format = Object.hasOwn(formats, lower) ? formats[lower] : undefined;
    if (unit) take("unit", { unit });
    else if (format) take("format", { format });
    else if (lower === "s" || lower === "z" || lower === "y")
      take("parameter", { parameter: lower.toUpperCase() as TouchstoneOptions["parameter"] });
    else if (lower === "g" || lower === "h")
      complain("not-one-port", `${word} parameters need two ports; a one-port file holds S, Z or Y`);
    else if (lower === "r") {
      const reference_ohm = words[++w] === undefined ? undefined : numberOf(words[w]!);
      if (reference_ohm !== undefined && reference_ohm > 0) take("reference", { reference_ohm });
      else
        complain("bad-reference", `the reference is ${JSON.stringify(short(words[w] ?? ""))}; it must be above 0 ohm`);
    } else
      complain(
        "unknown-option",
        `the option line holds ${JSON.stringify(short(word))}; it may hold a unit (Hz, kHz, MHz, GHz), S, Z or Y, RI, MA or DB, and R with ohms`,
      );
  }
  return options;
}

/** A word as a message shows it. */
export const short = (word: string): string => (word.length > 24 ? `${word.slice(0, 24)}…` : word);
