const written = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/** A number as the standard writes one, finite; undefined for anything else ("nan", "0x10", "1,5", "1e999"). */
export function numberOf(word: string): number | undefined {
  if (!written.test(word)) return undefined;
  const value = Number(word);
  return Number.isFinite(value) ? value : undefined;
}
