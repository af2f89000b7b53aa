import type { Complex } from "../../contract.ts";
import { failed, ok, type Result } from "../../result.ts";
import type { Match, PartQuality } from "./Match.ts";
import { partFor } from "./partFor.ts";

export interface LTopology {
  /** Which side the part across is on. */
  readonly shuntAt: "rig" | "antenna";
  readonly series: "coil" | "capacitor";
  readonly shunt: "coil" | "capacitor";
  readonly match: Result<Match>;
}

interface Arms {
  readonly x_ohm: number;
  readonly b_S: number;
}

/**
 * The eight L networks of a part in series and a part across, each with its values or the reason why it cannot be.
 *
 * Across at the rig (needs R ≤ Z₀): total series reactance X = ±√(R(Z₀ − R)), part across B = X/(Z₀R).
 * Across at the antenna (needs G ≤ 1/Z₀): total susceptance B = ±√(G(1/Z₀ − G)), part in series X = B Z₀/G.
 *
 * A part that comes out as zero is left out; it counts as a coil in series or a capacitor across. With both at zero the
 * antenna is matched already, and that is refused as well.
 * Source: matching by lumped elements, any textbook (Pozar, section 5.1, from memory).
 */
export function matchLNetwork(
  antenna_ohm: Complex,
  frequency_MHz: number,
  wanted_ohm: number,
  quality: PartQuality = {},
): readonly LTopology[] {
  const size2 = antenna_ohm.re ** 2 + antenna_ohm.im ** 2;
  const g = antenna_ohm.re / size2;
  const b = -antenna_ohm.im / size2;
  const found = { rig: shuntAtRig(antenna_ohm, wanted_ohm), antenna: shuntAtAntenna(g, b, wanted_ohm) };
  const kinds = ["coil", "capacitor"] as const;
  return (["rig", "antenna"] as const).flatMap((shuntAt) =>
    kinds.flatMap((series) =>
      kinds.map((shunt): LTopology => {
        const name = `L network: ${series} in series, ${shunt} across at the ${shuntAt}'s side`;
        const arms = found[shuntAt].find(
          (one) => seriesKind(one, wanted_ohm) === series && shuntKind(one, wanted_ohm) === shunt,
        );
        if (!arms || isNothing(arms, wanted_ohm))
          return { shuntAt, series, shunt, match: refuse(name, shuntAt, antenna_ohm.re, 1 / g, wanted_ohm, found) };
        const inSeries = partFor.series(arms.x_ohm, frequency_MHz, wanted_ohm, quality);
        const across = partFor.shunt(arms.b_S, frequency_MHz, wanted_ohm, quality);
        const ladder = shuntAt === "rig" ? [...inSeries, ...across] : [...across, ...inSeries];
        return { shuntAt, series, shunt, match: ok({ kind: "l-network", name, ladder, promisedSwr: 1, notes: [] }) };
      }),
    ),
  );
}

const ROUNDING = 1e-9;
const seriesKind = ({ x_ohm }: Arms, z0: number) => (x_ohm < -ROUNDING * z0 ? "capacitor" : "coil");
const shuntKind = ({ b_S }: Arms, z0: number) => (b_S * z0 < -ROUNDING ? "coil" : "capacitor");
const isNothing = ({ x_ohm, b_S }: Arms, z0: number) =>
  Math.abs(x_ohm) < ROUNDING * z0 && Math.abs(b_S) * z0 < ROUNDING;

function shuntAtRig({ re: r, im: x }: Complex, z0: number): readonly Arms[] {
  if (r > z0) return [];
  // Seen from the rig, R + jX in parallel form has conductance 1/Z₀ and susceptance −X/(Z₀R).
  const total = Math.sqrt(r * (z0 - r));
  return [total, -total].map((t) => ({ x_ohm: t - x, b_S: t / (z0 * r) }));
}

function shuntAtAntenna(g: number, b: number, z0: number): readonly Arms[] {
  if (g > 1 / z0) return [];
  // 1/(G + jB) has resistance Z₀ and reactance −B Z₀/G.
  const total = Math.sqrt(g * (1 / z0 - g));
  return [total, -total].map((t) => ({ x_ohm: (t * z0) / g, b_S: t - b }));
}

function refuse(
  name: string,
  shuntAt: "rig" | "antenna",
  r: number,
  parallel: number,
  z0: number,
  found: Record<"rig" | "antenna", readonly Arms[]>,
): Result<Match> {
  const arms = found[shuntAt];
  const because = arms.some((one) => isNothing(one, z0))
    ? `the antenna shows ${z0} ohm without it`
    : arms.length > 0
      ? `the arms that match are ${arms.map((one) => inWords(one, z0)).join(" or ")}`
      : shuntAt === "rig"
        ? `the resistance is ${r.toFixed(1)} ohm and must be at most ${z0} ohm`
        : `the parallel resistance is ${parallel.toFixed(1)} ohm and must be at least ${z0} ohm`;
  return failed({ code: "no-match", where: "feed", message: `No ${name}: ${because}.` });
}

function inWords(one: Arms, z0: number): string {
  const nothingAcross = Math.abs(one.b_S) * z0 < ROUNDING;
  const across = nothingAcross ? "nothing" : `${(1 / Math.abs(one.b_S)).toFixed(1)} ohm of ${shuntKind(one, z0)}`;
  return `${Math.abs(one.x_ohm).toFixed(1)} ohm of ${seriesKind(one, z0)} in series with ${across} across`;
}
