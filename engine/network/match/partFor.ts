import type { Section } from "./Ladder.ts";
import type { PartQuality } from "./Match.ts";

/**
 * The coil or capacitor that has a reactance in series, or a susceptance across, at one frequency; nothing where the
 * value is zero (below 1e-9 of the reference, where rounding decides the sign).
 *
 * Series: X > 0 coil X/ω, X < 0 capacitor −1/(ωX). Across: B > 0 capacitor B/ω, B < 0 coil −1/(ωB).
 */
export const partFor = {
  series: (x_ohm: number, frequency_MHz: number, reference_ohm: number, quality: PartQuality): readonly Section[] =>
    Math.abs(x_ohm) < 1e-9 * reference_ohm
      ? []
      : x_ohm > 0
        ? [{ kind: "series-coil", inductance_uH: x_ohm / (2 * Math.PI * frequency_MHz), ...q(quality.coilQ) }]
        : [
            {
              kind: "series-capacitor",
              capacitance_pF: -1e6 / (2 * Math.PI * frequency_MHz * x_ohm),
              ...q(quality.capacitorQ),
            },
          ],
  shunt: (b_S: number, frequency_MHz: number, reference_ohm: number, quality: PartQuality): readonly Section[] =>
    Math.abs(b_S) * reference_ohm < 1e-9
      ? []
      : b_S > 0
        ? [
            {
              kind: "shunt-capacitor",
              capacitance_pF: (1e6 * b_S) / (2 * Math.PI * frequency_MHz),
              ...q(quality.capacitorQ),
            },
          ]
        : [{ kind: "shunt-coil", inductance_uH: -1 / (2 * Math.PI * frequency_MHz * b_S), ...q(quality.coilQ) }],
} as const;

const q = (value: number | undefined): { q?: number } => (value === undefined ? {} : { q: value });
