import { figure } from "../../../charts/figure.ts";
import { fitMarks } from "../../../charts/fitMarks.ts";
import type { Mark } from "../../../charts/Mark.ts";
import type { LineLayout } from "./lineLayout.ts";

interface Asked {
  readonly layout: LineLayout;
  readonly text_px: number;
  readonly places: readonly { readonly id: string; readonly at: number; readonly text: string }[];
  readonly xName: string;
  readonly xText: (value: number) => string;
}

/** The numbers and words round a chart of lines: places of interest first, each on the side where it finds room. */
export function lineMarks({ layout, text_px, places, xName, xText }: Asked) {
  const { plot, width } = layout;
  const foot = plot.y + plot.height;
  let marks: Mark[] = [];
  for (const { id, at, text } of places)
    for (const side of ["middle", "start", "end"] as const) {
      const x = layout.x(at) + (side === "start" ? 3 : side === "end" ? -3 : 0);
      const one: Mark = { id: `p${id}`, text, x, y: plot.y - 1.2 * text_px, side, kind: "path" };
      const tried = fitMarks([...marks, one], text_px, width).marks;
      if (tried.length === marks.length) continue;
      marks = tried;
      break;
    }
  marks.push(
    ...layout.xTicks.map(
      (v): Mark => ({
        id: `x${v}`,
        text: xText(v),
        x: layout.x(v),
        y: foot + 0.95 * text_px,
        side: "middle",
        kind: "number",
      }),
    ),
    ...layout.yTicks.map(
      (v): Mark => ({
        id: `y${v}`,
        text: figure(v, Number.isInteger(v) ? 0 : Number.isInteger(10 * v) ? 1 : 2),
        x: plot.x - 0.5 * text_px,
        y: layout.y(v),
        side: "end",
        kind: "number",
      }),
    ),
    { id: "name", text: xName, x: plot.x + plot.width, y: foot + 2.3 * text_px, side: "end", kind: "word" },
  );
  return fitMarks(marks, text_px, width);
}
