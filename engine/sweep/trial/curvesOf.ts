import type { FigureCurves } from "./FigureCurves.ts";
import type { Figures } from "./Figures.ts";

/** Many figures as arrays, one a figure; impedances of the first fed element. */
export function curvesOf(figures: readonly Figures[]): FigureCurves {
  const feed = (one: Figures) => one.feeds[0]!;
  return {
    forward_dBi: figures.map((one) => one.forward_dBi),
    back_dBi: figures.map((one) => one.back_dBi),
    frontToBack_dB: figures.map((one) => one.frontToBack_dB),
    worstRear_dBi: figures.map((one) => one.worstRear_dBi),
    frontToRear_dB: figures.map((one) => one.frontToRear_dB),
    ...(figures.every((one) => one.pathGain_dBi !== null) && {
      pathGain_dBi: figures.map((one) => one.pathGain_dBi!),
    }),
    resistance_ohm: figures.map((one) => feed(one).impedance_ohm.re),
    reactance_ohm: figures.map((one) => feed(one).impedance_ohm.im),
    swr50: figures.map((one) => feed(one).swr50),
  };
}
