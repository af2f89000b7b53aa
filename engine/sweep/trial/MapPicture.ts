import type { ChartError } from "./ChartError.ts";
import type { FigureCurves } from "./FigureCurves.ts";

export type MapFigure = "forward" | "frontToBack" | "frontToRear" | "swr";

export interface MapMark {
  readonly spacing_wl: number;
  readonly spacing_m: number;
  readonly reflectorHeight_m: number;
  readonly value: number;
  /** It lies on the map's edge: beyond it may be better still. */
  readonly isAtEdge: boolean;
}

export interface MapPicture {
  readonly kind: "map";
  readonly isPreview: boolean;
  readonly spacing_wl: readonly number[];
  readonly spacing_m: readonly number[];
  readonly reflectorHeight_m: readonly number[];
  /** Row by row: at [length · spacings + spacing]. */
  readonly figures: FigureCurves;
  /** Where each figure is best. */
  readonly best: Readonly<Record<MapFigure, MapMark>>;
  /** The plan's own place; null when it lies off the map. */
  readonly here: { readonly spacing_wl: number; readonly spacing_m: number; readonly reflectorHeight_m: number } | null;
  readonly error: ChartError;
}
