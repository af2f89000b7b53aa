import type { SwrTop } from "../../charts/bandLayout.ts";
import { type Curve, readCurve } from "../../charts/Curve.ts";
import type { FrequencySpan } from "../../charts/feedFacts.ts";

/** The scale of an SWR chart on which its curves lie within the band, where one does. */
export function topFor(curves: readonly Curve[], { from_MHz, to_MHz }: FrequencySpan): SwrTop {
  const inBand = curves.flatMap((c) => [
    readCurve(c, from_MHz),
    readCurve(c, to_MHz),
    ...c.value.filter((_, i) => c.frequency_MHz[i]! >= from_MHz && c.frequency_MHz[i]! <= to_MHz),
  ]);
  const worst = Math.max(1, ...inBand.filter((v) => !Number.isNaN(v)));
  return worst <= 3 ? 3 : worst <= 5 ? 5 : 10;
}
