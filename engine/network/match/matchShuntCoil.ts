import type { Complex } from "../../contract.ts";
import { failed, ok, type Result } from "../../result.ts";
import type { Match, PartQuality } from "./Match.ts";

/**
 * Coil across the feed of an element cut short: with the element's reactance at X = −√(R (Z₀ − R)) its conductance is
 * 1/Z₀, and the coil Z₀R/|X| takes away the susceptance. The element's own reactance is brought to X by retrimming,
 * which the ladder holds as a part of its own until the antenna has been solved anew.
 *
 * Source: the trade's "hairpin" or shunt-coil match, every handbook (from memory); an L network, shunt arm outside.
 * Problem "no-match" when R is not below Z₀ by 1 % or more: at R = Z₀ the coil grows without bound.
 */
export function matchShuntCoil(
  antenna_ohm: Complex,
  frequency_MHz: number,
  wanted_ohm: number,
  quality: PartQuality = {},
): Result<Match> {
  const { re: r, im: x } = antenna_ohm;
  if (!(r < 0.99 * wanted_ohm))
    return failed({
      code: "no-match",
      where: "feed",
      message: `A coil across the feed cannot match a resistance of ${r.toFixed(1)} ohm to ${wanted_ohm} ohm; it must be below ${wanted_ohm} ohm by 1 % or more.${r > wanted_ohm ? " For a quarter-wave vertical so much usually means loss in the ground (common practice)." : ""}`,
    });
  const wantedX = -Math.sqrt(r * (wanted_ohm - r));
  const change = wantedX - x;
  const inductance_uH = (wanted_ohm * r) / -wantedX / (2 * Math.PI * frequency_MHz);
  const coil = { kind: "shunt-coil", inductance_uH, ...(quality.coilQ !== undefined && { q: quality.coilQ }) } as const;
  const retrims = Math.abs(change) >= 1e-9 * wanted_ohm;
  return ok({
    kind: "shunt-coil",
    name: "coil across the feed of a shortened element",
    ladder: retrims ? [{ kind: "retrim", reactance_ohm: change }, coil] : [coil],
    promisedSwr: 1,
    notes: retrims
      ? [
          {
            code: "retrim",
            message: `The element must be recut so that its reactance moves by ${change.toFixed(1)} ohm to ${wantedX.toFixed(1)} ohm; its resistance is taken as unmoved until it is solved so.`,
            measured: change,
          },
        ]
      : [],
  });
}
