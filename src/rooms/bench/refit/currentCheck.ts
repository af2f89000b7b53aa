import type { ArraySample } from "../../../../engine/index.ts";

export interface CurrentCheck {
  readonly frontToBack_dB: number;
  /** Ahead, over what the driven's current alone would make there. */
  readonly aheadOverDriven_dB: number;
}

/**
 * Front-to-back from measured base currents: F(dir) = F₁ + r e^{jφ} F₂ with the elements' own fields per ampere. They hold
 * whatever the bases are connected to; only the currents in other bases, which are taken as 0, are left out.
 *
 * @param sample fields in two directions at one elevation, ahead (first) and straight back
 * @param phase_deg of the second element's current over the first's, ahead positive
 */
export function currentCheck(
  sample: Pick<ArraySample, "fields">,
  first: number,
  second: number,
  ratio: number,
  phase_deg: number,
): CurrentCheck {
  const c = ratio * Math.cos((phase_deg * Math.PI) / 180);
  const s = ratio * Math.sin((phase_deg * Math.PI) / 180);
  // [port][direction][θre, θim, φre, φim]
  const at = (port: number, direction: number, k: number) => sample.fields[(port * 2 + direction) * 4 + k]!;
  const power = (direction: number, share: number) => {
    let sum = 0;
    for (const k of [0, 2]) {
      const re = at(first, direction, k) + share * (c * at(second, direction, k) - s * at(second, direction, k + 1));
      const im =
        at(first, direction, k + 1) + share * (c * at(second, direction, k + 1) + s * at(second, direction, k));
      sum += re * re + im * im;
    }
    return sum;
  };
  const decibels = (a: number, b: number) => 10 * Math.log10(a / b);
  return {
    frontToBack_dB: decibels(power(0, 1), power(1, 1)),
    aheadOverDriven_dB: decibels(power(0, 1), power(0, 0)),
  };
}
