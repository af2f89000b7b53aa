import type { BandLayout } from "./bandLayout.ts";
import type { FeedFacts } from "./feedFacts.ts";
import { figure } from "./figure.ts";
import { megahertz } from "./megahertz.ts";
import { type Box, type LabelLine, placeLabels, segmentTouches } from "./placeLabels.ts";
import type { BandQuantity } from "./readSweep.ts";
import { swr } from "./swr.ts";
import { textWidth_px } from "./textWidth.ts";
import { thinned } from "./thinned.ts";
import { type Spot, tracePath } from "./tracePath.ts";

export interface BandNote {
  readonly id: string;
  readonly text: string;
  readonly at: Spot;
  /** Null when no place was free: the words under the chart say the same. */
  readonly box: Box | null;
  /** From the mark to a note that stands away from it; "" when it stands beside. */
  readonly leader: string;
  readonly kind: "lowest" | "zero";
}

interface Asked {
  readonly layout: BandLayout;
  readonly quantity: BandQuantity;
  readonly text_px: number;
  readonly facts: readonly (FeedFacts & { readonly id: string })[];
  readonly lines: readonly LabelLine[];
  readonly keepOut: readonly Box[];
}

/** How far from its mark a note may stand: beyond the first it is led to by a line. */
const farOut_px = [6, 20, 36, 56];

const ways: readonly Spot[] = [
  [0, 1],
  [0, -1],
  [0.97, -0.25],
  [-0.97, -0.25],
  [0.97, 0.25],
  [-0.97, 0.25],
  [0.7, -0.7],
  [-0.7, -0.7],
  [0.7, 0.7],
  [-0.7, 0.7],
  [1, 0],
  [-1, 0],
];

/** Marks for the lowest SWR and for X = 0 of each live feedpoint, each with its figure beside it. */
export function bandNotes({ layout, quantity, text_px, facts, lines, keepOut }: Asked): BandNote[] {
  const notes: Omit<BandNote, "box" | "leader">[] = [];
  for (const f of facts) {
    if (quantity === "swr" && f.lowest)
      notes.push({
        id: `${f.id}/lowest`,
        text: `lowest ${figure(f.lowest.swr, 2)} at ${megahertz(f.lowest.frequency_MHz)}`,
        at: layout.point(f.lowest.frequency_MHz, f.lowest.swr),
        kind: "lowest",
      });
    for (const z of f.resonances) {
      const value = { swr: swr(z.resistance_ohm, 0), resistance: z.resistance_ohm, reactance: 0 }[quantity];
      notes.push({
        id: `${f.id}/zero${z.frequency_MHz}`,
        text: `X = 0 at ${megahertz(z.frequency_MHz)}`,
        at: layout.point(z.frequency_MHz, value),
        kind: "zero",
      });
    }
  }
  const shown = notes.filter((n) => n.at[1] >= layout.plot.y && n.at[1] <= layout.plot.y + layout.plot.height);
  const spots = shown.map(({ at: [x, y] }) => ({ x: x - 6, y: y - 6, width: 12, height: 12 }));
  const placed: BandNote[] = [];
  const taken = [...keepOut, ...spots];
  for (const n of shown) {
    const free = farOut_px.flatMap((by) => ways.map((away) => ({ at: stepped(n.at, away, by), away })));
    const notes = placed.flatMap((p) => (p.box ? [p.box] : []));
    const label = {
      id: n.id,
      width: textWidth_px(n.text, text_px),
      height: text_px * 1.2,
      isNeeded: true,
      // A line that led to it must not run through an earlier note.
      anchors: free.filter(({ at }) => !notes.some((box) => segmentTouches(n.at, at, box))),
    };
    const scene = {
      labels: [label],
      lines: lines.map((l) => ({ ...l, points: thinned(l.points, 120) })),
      keepOut: taken,
      frame: { x: layout.plot.x + 2, y: layout.plot.y, width: layout.plot.width - 4, height: layout.plot.height },
    };
    const box = placeLabels(scene).get(n.id) ?? null;
    if (box) taken.push(box);
    placed.push({ ...n, box, leader: box ? leaderTo(box, n.at) : "" });
  }
  return placed;
}

const stepped = ([x, y]: Spot, away: Spot, by: number): Spot => [x + away[0] * by, y + away[1] * by];

/** Straight from a spot to the nearest place of a box, if that is far enough to need leading. */
function leaderTo(box: Box, [x, y]: Spot): string {
  const to: Spot = [Math.max(box.x, Math.min(box.x + box.width, x)), Math.max(box.y, Math.min(box.y + box.height, y))];
  const far = Math.sqrt((to[0] - x) ** 2 + (to[1] - y) ** 2);
  return far > 18 ? tracePath([[x, y], to]) : "";
}
