export type Token =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "word"; readonly text: string }
  | { readonly kind: "mark"; readonly text: "+" | "-" | "*" | "/" | "^" | "(" | ")" | "%" };

export type Tokens =
  | { readonly ok: true; readonly tokens: readonly Token[] }
  | { readonly ok: false; readonly message: string };

/** Signs people paste from word processors, websites and phones, in the spelling the reader knows. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/½/g, " 1/2"],
  [/¼/g, " 1/4"],
  [/¾/g, " 3/4"],
  [/⅛/g, " 1/8"],
  [/⅜/g, " 3/8"],
  [/⅝/g, " 5/8"],
  [/⅞/g, " 7/8"],
  [/[−–—]/g, "-"],
  [/[×·⋅]/g, "*"],
  [/[÷⁄∕]/g, "/"],
  [/''|[″“”„]/g, " in "],
  [/"/g, " in "],
  [/['′’‘]/g, " ft "],
  [/°/g, " deg "],
  [/[λΛ]/g, " wl "],
  [/[ΩΩ]/g, " ohm "],
];

const pattern =
  /\s+|(?<number>(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+(?![A-Za-z\d]))?)|(?<word>#|[A-Za-z]+)|(?<mark>[-+*/^()%])|(?<odd>\S)/gu;

/**
 * Cuts a text into numbers, words and marks. A comma between digits is a decimal sign, as it is on most of the
 * keyboards of the world; a number may have only one decimal sign, so "1,020.5" is refused, not guessed at.
 */
export function readTokens(text: string): Tokens {
  let plain = text;
  for (const [from, to] of spellings) plain = plain.replace(from, to);
  const tokens: Token[] = [];
  let previousEnd = -1;
  for (const match of plain.matchAll(pattern)) {
    const { number, word, mark, odd } = match.groups!;
    if (odd !== undefined) return { ok: false, message: `“${odd}” has no meaning here` };
    if (number !== undefined) {
      const last = tokens.at(-1);
      if (last?.kind === "number" && previousEnd === match.index)
        return { ok: false, message: "A number can have only one decimal sign: write 1020.5 or 1020,5" };
      const value = Number(number.replace(",", "."));
      if (!Number.isFinite(value)) return { ok: false, message: `${number} is too large to use` };
      tokens.push({ kind: "number", value });
      previousEnd = match.index + number.length;
    } else if (word !== undefined) tokens.push({ kind: "word", text: word });
    else if (mark !== undefined) tokens.push({ kind: "mark", text: mark as "+" });
  }
  return { ok: true, tokens };
}
