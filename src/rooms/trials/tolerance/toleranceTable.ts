import type { ToleranceFigures, TolerancePicture } from "../../../../engine/index.ts";
import type { SavedTable } from "../save/SaveMenu.tsx";

const keys = ["forward_dBi", "frontToBack_dB", "frontToRear_dB", "resistance_ohm", "reactance_ohm", "swr50"] as const;
const cells = (figures: ToleranceFigures) => keys.map((key) => figures[key]);

export function toleranceTable({ exact, sensitivities, bands }: TolerancePicture): SavedTable {
  return {
    heads: [
      "row",
      "gain ahead [dBi; slopes dB]",
      "front to back [dB]",
      "front to loudest behind [dB]",
      "R [ohm]",
      "X [ohm]",
      "SWR to 50 ohm",
    ],
    rows: [
      ["as planned", ...cells(exact)],
      ...sensitivities.map(({ what, per, slope }) => [`change for 1 ${per} of ${what}`, ...cells(slope)]),
      ...sensitivities.flatMap(({ what, ends }) =>
        ends
          ? [
              [`${what} at its least`, ...cells(ends.less)],
              [`${what} at its most`, ...cells(ends.more)],
            ]
          : [],
      ),
      ...(bands
        ? (["low", "middle", "high"] as const).map((part) => [
            `${part === "low" ? "5 of 100 lie below" : part === "high" ? "5 of 100 lie above" : "middle"}`,
            ...keys.map((key) => bands[key][part]),
          ])
        : []),
    ],
  };
}
