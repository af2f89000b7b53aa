import type { AzimuthLayout } from "./azimuthLayout.ts";
import { bearing_deg, bearingText } from "./bearing.ts";
import { figure } from "./figure.ts";
import { fitMarks } from "./fitMarks.ts";
import { floor_dBi, ringLevels } from "./gainScale.ts";
import type { Mark } from "./Mark.ts";
import type { Box } from "./placeLabels.ts";
import { compassPoint } from "./polarPoint.ts";
import { compassSlice } from "./slicePath.ts";

export interface AzimuthMarks {
  readonly rules: readonly { readonly id: string; readonly d: string }[];
  readonly spokes: readonly { readonly id: string; readonly d: string }[];
  /** The sector behind that should be quiet. */
  readonly rear: readonly string[];
  /** The line along the beam. */
  readonly beam: string;
  readonly marks: readonly Mark[];
  readonly keepOut: readonly Box[];
}

interface Asked {
  readonly layout: AzimuthLayout;
  readonly outer_dBi: number;
  readonly text_px: number;
  readonly heading_deg: number;
  readonly rearSector_deg: number;
}

const px = (n: number) => n.toFixed(1);
const winds: Readonly<Record<number, string>> = { 0: "N", 90: "E", 180: "S", 270: "W" };

/** Lays out rings or rules, bearings, the beam's line and the rear sector. */
export function azimuthMarks(a: Asked): AzimuthMarks {
  return a.layout.form === "polar" ? polarMarks(a) : rectangularMarks(a);
}

function polarMarks({ layout, outer_dBi, text_px, heading_deg, rearSector_deg }: Asked): AzimuthMarks {
  const { hub, reach } = layout;
  const rules: { id: string; d: string }[] = [];
  const spokes: { id: string; d: string }[] = [];
  const marks: Mark[] = [];

  // The beam's own bearing is numbered first; a wind that stands in its way gives up its place.
  const put = (bearing: number, text: string, kind: Mark["kind"]) => {
    const [x, y] = compassPoint(hub, bearing, reach + 0.85 * text_px);
    const across = x - hub[0];
    const side = Math.abs(across) < 0.3 * reach ? "middle" : across > 0 ? "start" : "end";
    const lift = side === "middle" ? Math.sign(y - hub[1]) * 0.4 * text_px : 0;
    marks.push({ id: `b${bearing}`, text, x, y: y + lift, side, kind });
  };
  put(heading_deg, bearingText(heading_deg), "live");
  for (const b of [0, 90, 180, 270]) put(b, winds[b]!, "word");

  // Ring numbers stand along the direction that is farthest from beam, back and the rings' own spokes.
  const numbers_deg = quietBearing(heading_deg);
  for (const gain of ringLevels(outer_dBi)) {
    const [x, y] = layout.point(0, gain);
    const r = Math.sqrt((x - hub[0]) ** 2 + (y - hub[1]) ** 2);
    rules.push({
      id: `g${gain}`,
      d: `M${px(hub[0] - r)},${px(hub[1])}a${px(r)},${px(r)},0,1,0,${px(2 * r)},0a${px(r)},${px(r)},0,1,0,${px(-2 * r)},0`,
    });
    const at = compassPoint(hub, numbers_deg, r);
    marks.push({ id: `g${gain}`, text: figure(gain, 0), x: at[0], y: at[1], side: "middle", kind: "number" });
  }
  for (let b = 0; b < 360; b += 30) {
    const from = compassPoint(hub, b, reach * 0.2);
    const to = compassPoint(hub, b, reach + 4);
    spokes.push({ id: `s${b}`, d: `M${px(from[0])},${px(from[1])}L${px(to[0])},${px(to[1])}` });
  }
  const tip = compassPoint(hub, heading_deg, reach + 4);
  return {
    rules,
    spokes,
    rear: rearSector_deg > 0 ? [compassSlice(hub, reach, heading_deg + 180, Math.min(rearSector_deg, 359.9))] : [],
    beam: `M${px(hub[0])},${px(hub[1])}L${px(tip[0])},${px(tip[1])}`,
    ...fitMarks(marks, text_px, layout.width),
  };
}

function rectangularMarks({ layout, outer_dBi, text_px, heading_deg, rearSector_deg }: Asked): AzimuthMarks {
  const { plot, hub } = layout;
  const foot = hub[1];
  const rules: { id: string; d: string }[] = [];
  const spokes: { id: string; d: string }[] = [];
  const marks: Mark[] = [];
  for (const clockwise of [0, -180, 180, -90, 90, -45, 45, -135, 135]) {
    const x = layout.point(-clockwise, outer_dBi)[0];
    rules.push({ id: `s${clockwise}`, d: `M${px(x)},${px(foot)}v5` });
    marks.push({
      id: `s${clockwise}`,
      text: bearingText(bearing_deg(-clockwise, heading_deg)),
      x,
      y: foot + 0.95 * text_px,
      side: "middle",
      kind: clockwise === 0 ? "live" : "number",
    });
  }
  for (const gain of [...ringLevels(outer_dBi), floor_dBi(outer_dBi)]) {
    const y = layout.point(0, gain)[1];
    rules.push({ id: `g${gain}`, d: `M${px(plot.x)},${px(y)}h${px(plot.width)}` });
    marks.push({ id: `g${gain}`, text: figure(gain, 0), x: plot.x - 0.5 * text_px, y, side: "end", kind: "number" });
  }
  const y = foot + 2.4 * text_px;
  marks.push(
    { id: "beam", text: "beam", x: hub[0], y, side: "middle", kind: "word" },
    { id: "behind0", text: "behind", x: plot.x, y, side: "start", kind: "word" },
    { id: "behind1", text: "behind", x: plot.x + plot.width, y, side: "end", kind: "word" },
  );
  const half = (Math.min(rearSector_deg, 360) / 2 / 360) * plot.width;
  const box = (x: number) => `M${px(x)},${px(plot.y)}h${px(half)}v${px(plot.height)}h${px(-half)}Z`;
  return {
    rules,
    spokes,
    rear: half > 0 ? [box(plot.x), box(plot.x + plot.width - half)] : [],
    beam: `M${px(hub[0])},${px(foot)}V${px(plot.y)}`,
    ...fitMarks(marks, text_px, layout.width),
  };
}

/** Of the bearings half way between the spokes, the one nearest to abeam: there the fewest lines run. */
function quietBearing(heading_deg: number): number {
  const abeam = bearing_deg(90, heading_deg);
  return Math.floor(abeam / 30) * 30 + 15;
}
