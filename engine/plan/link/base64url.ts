/** Base 64 with the URL-safe alphabet and no padding (RFC 4648, section 5). */
const alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

export function toBase64url(bytes: readonly number[]): string {
  let text = "";
  for (let i = 0; i < bytes.length; i += 3) {
    const three = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const characters = Math.min(4, bytes.length - i + 1);
    for (let c = 0; c < characters; c++) text += alphabet[(three >> (18 - 6 * c)) & 63]!;
  }
  return text;
}

/** The bytes, or undefined when the text has a foreign character, an impossible length or bits left over. */
export function fromBase64url(text: string): number[] | undefined {
  const bytes: number[] = [];
  let held = 0;
  let bits = 0;
  for (const character of text) {
    const six = alphabet.indexOf(character);
    if (six < 0) return undefined;
    held = ((held << 6) | six) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes.push((held >> bits) & 255);
  }
  return bits >= 6 || (held & ((1 << bits) - 1)) !== 0 ? undefined : bytes;
}
