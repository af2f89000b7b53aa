import type { Sensitivity, TolerancePicture } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import type { Lengths } from "../useLengths.ts";
import { looseNames } from "./toleranceRows.ts";

/** What has to be held to what, in sentences: the tightest first. */
export function toleranceWords(picture: TolerancePicture, lengths: Lengths): string[] {
  const { sensitivities, lost, bands, notes } = picture;
  const words: string[] = [];
  const built = sensitivities.filter(({ per }) => per === "cm");
  const tight = built
    .flatMap((one) => {
      const most = least(one);
      return most === null ? [] : [{ name: looseNames[one.what], most }];
    })
    .sort((a, b) => a.most - b.most);
  for (const { name, most } of tight)
    words.push(
      `Hold the ${name} to ${lengths.small(Math.max(0.01, Math.floor(most) / 100))}: farther off, ${figure(lost.frontToBack_dB, 1)} dB of front to back or ${figure(lost.forward_dB, 1)} dB ahead may be gone.`,
    );
  const easy = built.filter((one) => least(one) === null).map((one) => looseNames[one.what]);
  if (easy.length > 0)
    words.push(
      `To the beam the ${easy.join(" and the ")} hardly ${easy.length > 1 ? "matter" : "matters"}, as far as was looked at; what becomes of the feed stands below.`,
    );
  if (bands)
    words.push(
      `Built within these errors, 90 of 100 have ${figure(bands.frontToBack_dB.low, 1)} to ${figure(bands.frontToBack_dB.high, 1)} dB front to back, ${figure(bands.forward_dBi.low, 1)} to ${figure(bands.forward_dBi.high, 1)} dBi ahead and an SWR of ${figure(bands.swr50.low, 2)} to ${figure(bands.swr50.high, 2)}.`,
    );
  return [...words, ...notes.map((note) => note.message)];
}

/** The least of what is allowed, either way and for either figure; null: nothing bounds it. */
function least({ allowed }: Sensitivity): number | null {
  const all = [allowed.frontToBack.less, allowed.frontToBack.more, allowed.forward.less, allowed.forward.more].filter(
    (one) => one !== null,
  );
  return all.length === 0 ? null : Math.min(...all);
}
