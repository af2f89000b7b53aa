import type { PacePicture } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import type { Lengths } from "../useLengths.ts";

/** The quietest spacing and what it costs, in sentences. */
export function paceWords(picture: PacePicture, lengths: Lengths): string[] {
  const { best, figures, spacing_m, spacing_wl, drivenHeight_m, reflectorHeight_m, atLimit } = picture;
  const last = spacing_m.length - 1;
  const at = (i: number) => `${lengths.near(spacing_m[i]!)} (${figure(spacing_wl[i]!, 3)} λ)`;
  const dB = (list: readonly number[], i: number) => figure(list[i]!, 1);
  const quiet = best.frontToBack;
  const words: string[] = [];
  if (figures.frontToBack_dB[quiet]! <= 0)
    words.push("Nowhere on this walk is it quieter behind than ahead: with these lengths the beam is turned round.");
  else {
    const edge = quiet === 0 || quiet === last ? " That is the end of the walk: beyond it may be quieter still." : "";
    words.push(
      `Quietest straight back at ${at(quiet)}: front to back ${dB(figures.frontToBack_dB, quiet)} dB, gain ahead ${dB(figures.forward_dBi, quiet)} dBi, feed ${figure(figures.resistance_ohm[quiet]!, 0)} Ω.${edge}`,
    );
  }
  if (best.frontToRear !== quiet)
    words.push(
      `Counting the worst direction behind, ${at(best.frontToRear)} is best: ${dB(figures.frontToRear_dB, best.frontToRear)} dB.`,
    );
  words.push(`Loudest ahead at ${at(best.forward)}: ${dB(figures.forward_dBi, best.forward)} dBi.`);
  if (atLimit) {
    words.push(
      "At each step both are cut anew, so the curves are of other lengths than the plan’s; moving the marker cuts them so.",
      `Recut at the quietest spacing: driven ${lengths.near(drivenHeight_m[quiet]!)}, reflector ${lengths.near(reflectorHeight_m[quiet]!)}.`,
    );
    if (atLimit.length > 0)
      words.push(`At ${atLimit.length} of ${spacing_m.length} steps a length came to the end of what was tried.`);
  }
  return words;
}
