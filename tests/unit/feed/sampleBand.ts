import type { BandReadout } from "../../../engine/index.ts";

const frequency_MHz = Array.from({ length: 29 }, (_, i) => 6.96 + 0.01 * i);

/** R = 30 + 100 (f − 7), X = 300 (f − 7.1). */
export const bandReadout: BandReadout = {
  frequency_MHz,
  feeds: [
    {
      elementId: "driven",
      resistance_ohm: frequency_MHz.map((f) => 30 + 100 * (f - 7)),
      reactance_ohm: frequency_MHz.map((f) => 300 * (f - 7.1)),
      swr50: frequency_MHz.map(() => 1),
    },
  ],
};
export const span = { from_MHz: 7, to_MHz: 7.2, label: "40 m" };
