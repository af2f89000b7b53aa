import type { MapPicture } from "../../../../engine/index.ts";
import type { MapPlace } from "./MapChart.tsx";

/** A figure at any place of the map, straight between its four neighbours; NaN off the map. */
export function readMap(picture: MapPicture, values: readonly number[], { spacing_m, height_m }: MapPlace): number {
  const across = part(picture.spacing_m, spacing_m);
  const up = part(picture.reflectorHeight_m, height_m);
  if (!across || !up) return Number.NaN;
  const columns = picture.spacing_m.length;
  const at = (row: number, column: number) => values[row * columns + column]!;
  const row = (r: number) => mix(at(r, across.i), at(r, across.i + 1), across.t);
  return mix(row(up.i), row(up.i + 1), up.t);
}

/** At a line itself its neighbour has no say, be it not a number. */
const mix = (a: number, b: number, t: number) => (t === 0 ? a : t === 1 ? b : a + t * (b - a));

function part(list: readonly number[], at: number): { readonly i: number; readonly t: number } | null {
  const [from, to] = [list[0]!, list.at(-1)!];
  if (!(at >= from && at <= to)) return null;
  const place = ((at - from) / (to - from)) * (list.length - 1);
  const i = Math.min(list.length - 2, Math.floor(place));
  return { i, t: place - i };
}
