import { type Box, placeLabels } from "../../../charts/placeLabels.ts";
import { textWidth_px } from "../../../charts/textWidth.ts";
import type { Spot } from "../../../charts/tracePath.ts";

interface Named {
  readonly id: string;
  readonly name: string;
  readonly spot: Spot;
}

/** Which way from its mark a name is tried. */
const sides: readonly Spot[] = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [0.8, -0.6],
  [-0.8, -0.6],
  [0.8, 0.6],
  [-0.8, 0.6],
];

/** Where the names of the marks stand, by id; the design's own is "here". One that finds no room has none: the key names it. */
export function mapNames(
  best: readonly Named[],
  here: Spot | null,
  text_px: number,
  plot: Box,
): ReadonlyMap<string, Box> {
  const all = [...(here ? [{ id: "here", name: "this design", spot: here }] : []), ...best];
  return placeLabels({
    labels: all.map(({ id, name, spot }) => ({
      id,
      width: textWidth_px(name, text_px),
      height: 1.2 * text_px,
      isNeeded: true,
      anchors: sides.map((away) => ({ at: [spot[0] + 4 * away[0], spot[1] + 4 * away[1]] as const, away })),
    })),
    lines: [],
    keepOut: all.map(({ spot: [x, y] }) => ({ x: x - 7, y: y - 7, width: 14, height: 14 })),
    frame: { x: plot.x + 2, y: plot.y + 2, width: plot.width - 4, height: plot.height - 4 },
  });
}
