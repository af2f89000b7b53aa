import { type Lay, wireOf } from "./layingsToTry.ts";
import type { HeightBudget, RadialLaying } from "./RadialsPicture.ts";

/** Less than this is not worth cutting for. */
const WORTH_dB = 0.1;

/** Puts a height's answers together; null while nothing that the wire suffices for is solved. */
export function heightBudget(
  evens: readonly RadialLaying[],
  full: readonly RadialLaying[],
  splits: readonly { readonly firstPart: number; readonly solved: readonly RadialLaying[] }[],
  amounts: readonly number[],
  wire_m: number,
  height_m: number,
  knee_dBPer10m: number,
): HeightBudget | null {
  const evenBest = loudest(evens.filter((lay) => fits(lay, wire_m)));
  if (!evenBest) return null;
  const points = amounts.flatMap((amount_m) => {
    const best = loudest(evens.filter((lay) => fits(lay, amount_m)));
    return best ? [{ wire_m: amount_m, best }] : [];
  });
  const curve = points.map((point, i) => {
    const next = points[i + 1];
    const gain = next && next.best.forward_dBi - point.best.forward_dBi;
    return { ...point, slope_dBPer10m: gain === undefined ? null : (10 * gain) / (next!.wire_m - point.wire_m) };
  });
  // The last stretch that is still worth it ends at the knee.
  const lastWorth = curve.findLastIndex(
    ({ slope_dBPer10m }) => slope_dBPer10m !== null && slope_dBPer10m >= knee_dBPer10m,
  );
  const knee = curve[lastWorth + 1];
  const bestSplits = [
    { firstPart: evens[0]!.fields.length > 1 ? 0.5 : 1, best: evenBest },
    ...splits.flatMap(({ firstPart, solved }) => {
      const best = loudest(solved);
      return best ? [{ firstPart, best }] : [];
    }),
  ].sort((a, b) => a.firstPart - b.firstPart);
  const cutShort = full.flatMap((asLong) => {
    const { count, length_m } = asLong.fields[0]!;
    const shorter = loudest(evens.filter(({ fields }) => fields[0]!.count === count && fields[0]!.length_m < length_m));
    const gain_dB = shorter ? shorter.forward_dBi - asLong.forward_dBi : 0;
    return shorter && gain_dB > WORTH_dB ? [{ asLong, shorter, gain_dB }] : [];
  });
  return {
    height_m,
    curve,
    knee_m: knee && knee.slope_dBPer10m !== null ? knee.wire_m : null,
    counts: [...full].sort((a, b) => a.fields[0]!.count - b.fields[0]!.count),
    splits: bestSplits,
    best: loudest(bestSplits.map(({ best }) => best))!,
    cutShort: cutShort.sort((a, b) => a.asLong.fields[0]!.count - b.asLong.fields[0]!.count),
  };
}

const fits = (lay: Lay, wire_m: number) => wireOf(lay) <= wire_m + 1e-9;

export function loudest(lays: readonly RadialLaying[]): RadialLaying | undefined {
  return lays.reduce<RadialLaying | undefined>(
    (best, lay) => (best && best.forward_dBi >= lay.forward_dBi ? best : lay),
    undefined,
  );
}
