import type { ParsedQuantity, QuantityContext, QuantityKind } from "./QuantityKind.ts";
import { QuantityReader, Unreadable } from "./QuantityReader.ts";
import { quantityTraits } from "./quantityTraits.ts";
import { readTokens } from "./readTokens.ts";
import { shortenText } from "./shortenText.ts";

/** Longer than any quantity; a pasted page is refused at once. */
export const longestQuantity = 120;

/**
 * Reads a quantity as people write them and gives it in the unit of its kind.
 *
 *   sum    = run { ("+" | "−") run }
 *   run    = ["−"] term { term }                     33 ft 6 1/2 in: lengths side by side add up
 *   term   = factor { ("×" | "/") factor | unit | "/" unit }
 *   factor = ["−" | "+"] primary ["^" factor]
 *
 * A unit applies to the whole term before it, so 234/7.1 ft is 32.96 ft and 1/4 wl is a quarter wave.
 * The result is rounded to 12 significant digits, which hides what the conversion between units left behind.
 * Never throws.
 */
export function parseQuantity(text: string, kind: QuantityKind, context: QuantityContext): ParsedQuantity {
  const traits = quantityTraits[kind];
  const shown = shortenText(text);
  if (text.trim() === "") return { ok: false, message: `Nothing is written. Write ${traits.wanted}.` };
  if (text.length > longestQuantity)
    return {
      ok: false,
      message: `“${shown}” is ${text.length} characters long; a quantity has ${longestQuantity} at most.`,
    };
  const cut = readTokens(text);
  if (!cut.ok) return { ok: false, message: `${cut.message}.` };
  try {
    const value = new QuantityReader(cut.tokens, kind, context).read();
    if (!Number.isFinite(value)) return { ok: false, message: `“${shown}” does not come to a number.` };
    return { ok: true, value: Number(value.toPrecision(12)) };
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, message: error.message };
    // The unit library throws when units do not go together, such as metres plus megahertz.
    return { ok: false, message: `“${shown}” is not ${traits.wanted}.` };
  }
}
