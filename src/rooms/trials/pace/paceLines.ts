import type { PacePicture, TrialLook } from "../../../../engine/index.ts";
import { figureCharts } from "../figureCharts.ts";
import type { Lengths } from "../useLengths.ts";

/** A walk as charts: spacing to the right, in the person's unit. */
export function paceLines(picture: PacePicture, look: TrialLook | undefined, lengths: Lengths) {
  const x = picture.spacing_m.map((m) => m * lengths.perMetre);
  const { frontToBack, forward } = picture.best;
  const places = [
    { id: "quiet", at: x[frontToBack]!, text: "quietest behind" },
    ...(forward === frontToBack ? [] : [{ id: "loud", at: x[forward]!, text: "loudest ahead" }]),
  ];
  return { x, places, charts: figureCharts(picture.figures, look) };
}
