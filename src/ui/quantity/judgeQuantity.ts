import { formatQuantity } from "./formatQuantity.ts";
import { parseQuantity } from "./parseQuantity.ts";
import type { ParsedQuantity, QuantityContext, QuantityKind } from "./QuantityKind.ts";

export interface QuantityRules {
  /** Both ends are allowed. */
  readonly least?: number;
  readonly most?: number;
  /** Anything the field's surroundings know against a value, in one sentence; null when there is nothing. */
  readonly check?: (value: number) => string | null;
}

/** Reads a text and holds it against the field's rules; a refusal names the value and the limit. */
export function judgeQuantity(
  text: string,
  kind: QuantityKind,
  context: QuantityContext,
  rules: QuantityRules,
): ParsedQuantity {
  const parsed = parseQuantity(text, kind, context);
  if (!parsed.ok) return parsed;
  const against = objectionTo(parsed.value, kind, context, rules);
  return against === null ? parsed : { ok: false, message: against };
}

/** What is wrong with a value that has been read, or null. */
export function objectionTo(
  value: number,
  kind: QuantityKind,
  { units }: QuantityContext,
  { least, most, check }: QuantityRules,
): string | null {
  if (least !== undefined && value < least)
    return `${formatQuantity(value, kind, units)} is too small: at least ${formatLimit(least, kind, units)}.`;
  if (most !== undefined && value > most)
    return `${formatQuantity(value, kind, units)} is too large: at most ${formatLimit(most, kind, units)}.`;
  return check?.(value) ?? null;
}

/** A limit is never rounded to something the field would then refuse to tell apart from it: very small ones keep digits. */
function formatLimit(limit: number, kind: QuantityKind, units: QuantityContext["units"]): string {
  const text = formatQuantity(limit, kind, units);
  return limit !== 0 && /^0(\.0+)?\s/.test(text) ? `${Number(limit.toPrecision(2))} ${kind.split("_")[1] ?? ""}` : text;
}
