import type { RadialLaying } from "../../../../engine/index.ts";
import type { Lengths } from "../useLengths.ts";

/** "16 × 3.70 m" under each element, once where they are alike. */
export function layingText({ fields }: Pick<RadialLaying, "fields">, lengths: Lengths): string {
  const each = fields.map((one) => `${one.count} × ${lengths.near(one.length_m)}`);
  const [first] = each;
  if (each.length > 1 && each.every((one) => one === first)) return `${first} each`;
  return each.join(" and ");
}

/** Where radials lie, in a word or two. */
export function heightName(height_m: number, lengths: Lengths): string {
  if (height_m === 0) return "lying";
  return height_m > 0 ? `raised ${lengths.text(height_m)}` : `${lengths.text(-height_m)} deep`;
}
