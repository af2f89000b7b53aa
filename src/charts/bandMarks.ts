import type { BandLayout } from "./bandLayout.ts";
import type { FrequencySpan } from "./feedFacts.ts";
import { figure } from "./figure.ts";
import { fitMarks } from "./fitMarks.ts";
import type { Mark } from "./Mark.ts";
import { megahertz } from "./megahertz.ts";
import type { Box } from "./placeLabels.ts";
import type { BandQuantity } from "./readSweep.ts";

export interface BandMarks {
  readonly marks: readonly Mark[];
  readonly keepOut: readonly Box[];
}

interface Asked {
  readonly layout: BandLayout;
  readonly quantity: BandQuantity;
  readonly text_px: number;
  readonly band: FrequencySpan;
  readonly bandLabel: string;
  readonly design_MHz: number;
}

/** The numbers round a band chart: edges first, then the design frequency, then what else fits. */
export function bandMarks({ layout, quantity, text_px, band, bandLabel, design_MHz }: Asked): BandMarks {
  const { plot } = layout;
  const foot = plot.y + plot.height;
  const at = (f: number, kind: Mark["kind"]): Mark => ({
    id: `f${f}${kind}`,
    text: megahertz(f),
    x: layout.x(f),
    y: foot + 0.95 * text_px,
    side: "middle",
    kind,
  });
  const decimals = quantity === "swr" ? 1 : 0;
  const marks: Mark[] = [
    at(band.from_MHz, "path"),
    at(band.to_MHz, "path"),
    at(design_MHz, "live"),
    ...layout.frequencyTicks_MHz.map((f) => at(f, "number")),
    ...layout.ticks.map(
      (v): Mark => ({
        id: `v${v}`,
        text: Number.isInteger(v) ? figure(v, 0) : figure(v, decimals),
        x: plot.x - 0.5 * text_px,
        y: layout.y(v),
        side: "end",
        kind: "number",
      }),
    ),
    {
      id: "label",
      text: bandLabel,
      x: layout.x((band.from_MHz + band.to_MHz) / 2),
      y: foot + 2.4 * text_px,
      side: "middle",
      kind: "word",
    },
    { id: "unit", text: "MHz", x: plot.x + plot.width, y: foot + 2.4 * text_px, side: "end", kind: "word" },
  ];
  return fitMarks(marks, text_px, layout.width);
}
