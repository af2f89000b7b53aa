/**
 * About how wide a text will be, in px, erring wide: labels are placed before they are drawn, and asking the browser
 * for each would force a layout in every frame of a drag. Widths are those of the page's face in its bold weight.
 */
export function textWidth_px(text: string, size_px: number): number {
  let ems = 0;
  for (const c of text) ems += "iljtfrI.,:;'|!() ".includes(c) ? 0.36 : "mwMWQ@%".includes(c) ? 0.94 : 0.62;
  return ems * size_px;
}
