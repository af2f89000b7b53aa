/** Several short facts in a line that breaks between them only. */
export function inOneLine(...parts: readonly (string | null)[]): string {
  return parts
    .filter((part) => part !== null)
    .map((part) => part.replaceAll(" ", "\u00a0"))
    .join(", ");
}
