/** No-break spaces between numbers and their units, so that no line ends between them. */
export function keepUnits(text: string): string {
  return text.replace(/([\d½]) (?=(?:dBi?|k?W|MHz|m|S-units?)\b)/g, "$1\u00a0");
}
