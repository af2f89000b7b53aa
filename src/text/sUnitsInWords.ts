/** An S-unit is 6 dB below 30 MHz (IARU Region 1 recommendation R.1, 1981); real meters stray from it widely. */
const sUnit_dB = 6;

/** A difference without its sign, to half an S-unit: "about 1½ S-units"; null under a quarter of one. */
export function sUnitsInWords(difference_dB: number): string | null {
  const halves = Math.round((2 * Math.abs(difference_dB)) / sUnit_dB);
  if (halves === 0) return null;
  if (halves === 1) return "about half an S-unit";
  const whole = Math.floor(halves / 2);
  const half = halves % 2 === 1 ? "½" : "";
  return `about ${whole}${half} S-unit${halves === 2 ? "" : "s"}`;
}
