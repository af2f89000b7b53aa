/** Quotes what somebody typed inside a message without letting a pasted page through. */
export function shortenText(text: string): string {
  const flat = text.trim().replace(/\s+/g, " ");
  return flat.length > 24 ? `${Array.from(flat).slice(0, 22).join("")}…` : flat;
}
