import type { BandTrialPicture } from "../../../../engine/index.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import type { BandSpan } from "../../../store/bandSpan.ts";

/** What becomes of the beam over the stretch looked at. */
export function bandWords(picture: BandTrialPicture, span: BandSpan): string[] {
  const { reversals_MHz, frequency_MHz } = picture;
  const from = megahertz(frequency_MHz[0] ?? Number.NaN);
  const to = megahertz(frequency_MHz.at(-1) ?? Number.NaN);
  if (reversals_MHz.length === 0) {
    const isAhead = picture.figures.frontToBack_dB.every((value) => value > 0);
    return [
      isAhead
        ? `The beam looks ahead all the way from ${from} to ${to} MHz.`
        : `From ${from} to ${to} MHz it is nowhere louder ahead than behind.`,
    ];
  }
  const inside = reversals_MHz.filter((f) => f >= span.from_MHz && f <= span.to_MHz);
  const where = reversals_MHz.map(megahertz).join(" and ");
  return [
    `The beam turns round at ${where} MHz: ${inside.length > 0 ? "that is inside the band" : "that is outside the band"}.`,
  ];
}
