import { bearing_deg, bearingText } from "./bearing.ts";
import type { CutForm, ElevationLayout } from "./elevationLayout.ts";
import { elevationMap } from "./elevationMap.ts";
import { elevationTicks } from "./elevationTicks.ts";
import { figure } from "./figure.ts";
import { floor_dBi, ringLevels } from "./gainScale.ts";
import type { Mark } from "./Mark.ts";
import type { PathBand } from "./PathBand.ts";
import { polarPoint } from "./polarPoint.ts";
import { slicePath } from "./slicePath.ts";

/** The sheet a cut is drawn on: rules, numbers, words, and the shapes that carry the path. */
export interface ElevationMarks {
  readonly rules: readonly { readonly id: string; readonly d: string }[];
  readonly spokes: readonly { readonly id: string; readonly d: string }[];
  readonly wedges: readonly string[];
  /** All of them, the most needed first: which of them fit depends on what else stands there. */
  readonly marks: readonly Mark[];
}

interface Asked {
  readonly layout: ElevationLayout;
  readonly form: CutForm;
  readonly stretched: boolean;
  readonly outer_dBi: number;
  readonly text_px: number;
  readonly heading_deg: number;
  readonly path: PathBand;
}

/** Lays out rings or rules with their numbers, the angles, the words under the ground line and the path's wedge. */
export function elevationMarks(a: Asked): ElevationMarks {
  const { layout, form, outer_dBi, text_px, path } = a;
  const polar = form === "polar";
  const { hub, reach, ground_y, plot } = layout;
  const map = elevationMap(a.stretched);
  const rules: { id: string; d: string }[] = [];
  const spokes: { id: string; d: string }[] = [];
  const marks: Mark[] = [];

  for (const gain of ringLevels(outer_dBi)) {
    const text = figure(gain, 0);
    if (polar) {
      const r = hub[1] - layout.point(90, gain)[1];
      rules.push({ id: `g${gain}`, d: `M${px(hub[0] - r)},${px(hub[1])}a${px(r)},${px(r)},0,0,1,${px(2 * r)},0` });
      marks.push({ id: `g${gain}`, text, x: hub[0], y: hub[1] - r, side: "middle", kind: "number" });
    } else {
      const y = layout.point(90, gain)[1];
      rules.push({ id: `g${gain}`, d: `M${px(plot.x)},${px(y)}h${px(plot.width)}` });
      marks.push({ id: `g${gain}`, text, x: plot.x - 0.5 * text_px, y, side: "end", kind: "number" });
    }
  }
  if (!polar)
    marks.push({
      id: "floor",
      text: figure(floor_dBi(outer_dBi), 0),
      x: plot.x - 0.5 * text_px,
      y: ground_y,
      side: "end",
      kind: "number",
    });

  // The path's own elevation is numbered before the standing ones, which give way to it.
  const pxPerDegree = polar ? ((reach + 8) * Math.PI) / 180 : plot.width / 180;
  const apart = polar ? 1.25 * text_px : 2.3 * text_px;
  const own = path.elevation_deg;
  const standing = elevationTicks(map, pxPerDegree, apart).filter(
    (e) => Math.abs(map.toScreen(e) - map.toScreen(own)) * pxPerDegree >= apart,
  );
  for (const e of [own, ...standing]) {
    const kind = e === own ? ("path" as const) : ("number" as const);
    for (const at of e === 90 ? [90] : [e, 180 - e]) {
      const s = map.toScreen(at);
      if (polar) {
        const [x, y] = polarPoint(hub, s, reach + 0.85 * text_px);
        marks.push({ id: `a${at}`, text: `${e}°`, x, y, side: s < 90 ? "start" : "end", kind });
        if (kind === "number") spokes.push({ id: `a${at}`, d: spoke(hub, s, reach) });
      } else {
        const x = layout.point(at, outer_dBi)[0];
        marks.push({ id: `a${at}`, text: `${e}°`, x, y: ground_y + 0.9 * text_px, side: "middle", kind });
        rules.push({ id: `a${at}`, d: `M${px(x)},${px(ground_y)}v5` });
      }
    }
  }
  if (!polar) {
    marks.push({ id: "up", text: "90°", x: hub[0], y: ground_y + 0.9 * text_px, side: "middle", kind: "number" });
    rules.push({ id: "up", d: `M${px(hub[0])},${px(ground_y)}v${px(-reach)}` });
  }

  const wordsY = ground_y + (polar ? 1.1 : 2.4) * text_px;
  const ahead = bearingText(a.heading_deg);
  const behind = bearingText(bearing_deg(180, a.heading_deg));
  const room = polar ? 2 * reach : plot.width;
  const isRoomy = room > 27 * text_px;
  const left = polar ? hub[0] - reach : plot.x;
  const right = polar ? hub[0] + reach : plot.x + plot.width;
  marks.push(
    {
      id: "behind",
      text: isRoomy ? `from behind, ${behind}` : `behind ${behind}`,
      x: left,
      y: wordsY,
      side: "start",
      kind: "word",
    },
    {
      id: "ahead",
      text: isRoomy ? `toward ${ahead}, path at ${own}°` : `toward ${ahead}`,
      x: right,
      y: wordsY,
      side: "end",
      kind: "word",
    },
  );

  const wedges = [
    [path.from_deg, path.to_deg],
    [180 - path.to_deg, 180 - path.from_deg],
  ].map(([from, to]) => {
    const [s0, s1] = [map.toScreen(from!), map.toScreen(to!)];
    if (polar) return slicePath(hub, reach, s0, s1);
    const x0 = layout.point(to!, outer_dBi)[0];
    return `M${px(x0)},${px(ground_y)}v${px(-reach)}H${px(layout.point(from!, outer_dBi)[0])}V${px(ground_y)}Z`;
  });

  return { rules, spokes, wedges, marks };
}

const px = (n: number) => n.toFixed(1);

const spoke = (hub: readonly [number, number], screen_deg: number, reach: number) => {
  const [x0, y0] = polarPoint(hub, screen_deg, reach * 0.2);
  const [x1, y1] = polarPoint(hub, screen_deg, reach + 4);
  return `M${px(x0)},${px(y0)}L${px(x1)},${px(y1)}`;
};
