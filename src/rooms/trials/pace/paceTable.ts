import type { PacePicture } from "../../../../engine/index.ts";
import { figureColumns } from "../figureColumns.ts";
import type { SavedTable } from "../save/SaveMenu.tsx";

export function paceTable(picture: PacePicture): SavedTable {
  const { heads, row } = figureColumns(picture.figures);
  return {
    heads: ["spacing [m]", "spacing [wavelengths]", "driven length [m]", "reflector length [m]", ...heads],
    rows: picture.spacing_m.map((spacing_m, i) => [
      spacing_m,
      picture.spacing_wl[i]!,
      picture.drivenHeight_m[i] ?? null,
      picture.reflectorHeight_m[i] ?? null,
      ...row(i),
    ]),
  };
}
