/**
 * Text as UTF-8. A lone half of a surrogate pair, which UTF-8 proper has no bytes for, takes the three bytes its number
 * would have, so that any string comes back exactly.
 */
export function textToBytes(text: string): number[] {
  const bytes: number[] = [];
  for (const character of text) {
    const code = character.codePointAt(0)!;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), tail(code));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), tail(code >> 6), tail(code));
    else bytes.push(0xf0 | (code >> 18), tail(code >> 12), tail(code >> 6), tail(code));
  }
  return bytes;
}

/** The text, or undefined when the bytes are none of the above. */
export function textFromBytes(bytes: readonly number[]): string | undefined {
  let text = "";
  for (let i = 0; i < bytes.length; ) {
    const first = bytes[i++]!;
    const more = first < 0x80 ? 0 : first >= 0xf0 ? 3 : first >= 0xe0 ? 2 : first >= 0xc0 ? 1 : -1;
    if (more < 0) return undefined;
    let code = more === 0 ? first : first & (0x3f >> more);
    for (let k = 0; k < more; k++) {
      const next = bytes[i++];
      if (next === undefined || (next & 0xc0) !== 0x80) return undefined;
      code = (code << 6) | (next & 0x3f);
    }
    if (code > 0x10ffff) return undefined;
    text += String.fromCodePoint(code);
  }
  return text;
}

function tail(code: number): number {
  return 0x80 | (code & 0x3f);
}
