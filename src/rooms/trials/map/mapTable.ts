import type { MapPicture } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { figureColumns } from "../figureColumns.ts";
import type { SavedTable } from "../save/SaveMenu.tsx";
import type { Lengths } from "../useLengths.ts";

/** A table for reading: a dozen lines of the map either way, the longest reflector on top as on the map. */
export function mapTable(picture: MapPicture, values: readonly number[], decimals: number, lengths: Lengths) {
  const { spacing_m, reflectorHeight_m } = picture;
  const across = some(spacing_m.length, 11);
  return {
    heads: ["reflector", ...across.map((i) => lengths.near(spacing_m[i]!))],
    rows: () =>
      some(reflectorHeight_m.length, 11)
        .toReversed()
        .map((r) => [
          lengths.near(reflectorHeight_m[r]!),
          ...across.map((i) => figure(values[r * spacing_m.length + i]!, decimals)),
        ]),
  };
}

const some = (length: number, count: number) =>
  Array.from({ length: count }, (_, i) => Math.round((i * (length - 1)) / (count - 1)));

/** Every point of the map, with every figure. */
export function mapSavedTable(picture: MapPicture): SavedTable {
  const { heads, row } = figureColumns(picture.figures);
  const columns = picture.spacing_m.length;
  return {
    heads: ["spacing [m]", "spacing [wavelengths]", "reflector length [m]", ...heads],
    rows: picture.reflectorHeight_m.flatMap((height_m, r) =>
      picture.spacing_m.map((spacing_m, i) => [spacing_m, picture.spacing_wl[i]!, height_m, ...row(r * columns + i)]),
    ),
  };
}
