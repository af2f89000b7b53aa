/** What a drawing's looks hang on in its style sheet; written into the file, which has none. */
const looks = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linejoin",
  "stroke-linecap",
  "opacity",
  "font-family",
  "font-size",
  "font-weight",
  "text-anchor",
  "dominant-baseline",
  "paint-order",
  "visibility",
] as const;

/** A drawing of the page as a file that stands by itself: its looks as they are on screen, on the sheet's ground. */
export function svgFile(drawing: SVGSVGElement, title: string): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const shown = [drawing, ...drawing.querySelectorAll<SVGElement>("*")];
  const copied = [copy, ...copy.querySelectorAll<SVGElement>("*")];
  for (const [i, element] of shown.entries()) {
    const style = getComputedStyle(element);
    const target = copied[i]!;
    for (const look of looks) {
      const value = style.getPropertyValue(look);
      if (value !== "") target.setAttribute(look, value);
    }
    target.removeAttribute("class");
  }
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  const ground = document.createElementNS("http://www.w3.org/2000/svg", "rect");
  ground.setAttribute("width", "100%");
  ground.setAttribute("height", "100%");
  ground.setAttribute("fill", getComputedStyle(drawing).backgroundColor || "#ffffff");
  copy.prepend(ground);
  const name = document.createElementNS("http://www.w3.org/2000/svg", "title");
  name.textContent = title;
  copy.prepend(name);
  return new XMLSerializer().serializeToString(copy);
}
