/** Printed where a number should stand and there is none: not measured, not solved, or exactly zero field. */
export const noFigure = "–";

/**
 * A number as the page prints it: fixed decimals, a true minus sign (U+2212, as wide as a plus in tabular figures),
 * no sign on a zero however it was rounded, and an en dash for anything that is not finite.
 */
export function figure(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return noFigure;
  const digits = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(digits) !== 0 ? `−${digits}` : digits;
}

/** As `figure`, with a plus before what is above zero: for differences. */
export function signedFigure(value: number, decimals: number): string {
  const text = figure(value, decimals);
  return value > 0 && Number.isFinite(value) && Number(text) !== 0 ? `+${text}` : text;
}

/** A printed figure with its unit; a figure that is not there has none. */
export const withUnit = (text: string, unit: string) => (text === noFigure ? text : `${text} ${unit}`);
