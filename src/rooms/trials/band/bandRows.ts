import type { BandTrialPicture, Stretches } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import type { BandSpan } from "../../../store/bandSpan.ts";

/** For each figure: where it is good, how wide that is, and what part of the band it covers. */
export function bandRows(picture: BandTrialPicture, span: BandSpan): string[][] {
  const { stretches, good, frequency_MHz } = picture;
  const from = frequency_MHz[0] ?? Number.NaN;
  const to = frequency_MHz.at(-1) ?? Number.NaN;
  const row = (name: string, list: Stretches) => [
    name,
    list.length === 0
      ? "nowhere"
      : list
          .map((one) => {
            // What reaches the end of what was looked at may go on.
            const low = one.from_MHz <= from ? "below " : "";
            const high = one.to_MHz >= to ? "beyond " : "";
            return `${low}${megahertz(one.from_MHz)} … ${high}${megahertz(one.to_MHz)}`;
          })
          .join(", "),
    `${figure(1000 * widthIn(list, from, to), 0)} kHz`,
    `${figure((100 * widthIn(list, span.from_MHz, span.to_MHz)) / (span.to_MHz - span.from_MHz), 0)} %`,
  ];
  return [
    row(`SWR up to ${figure(good.swr, 1)}`, stretches.swr),
    row(`front to back from ${figure(good.frontToBack_dB, 1)} dB`, stretches.frontToBack),
    row(`gain within ${figure(good.forwardWithin_dB, 1)} dB of its best`, stretches.forward),
    row("all three", stretches.all),
  ];
}

function widthIn(list: Stretches, from: number, to: number): number {
  return list.reduce((sum, one) => sum + Math.max(0, Math.min(one.to_MHz, to) - Math.max(one.from_MHz, from)), 0);
}
