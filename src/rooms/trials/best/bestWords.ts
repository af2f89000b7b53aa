import type { BestPicture } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import type { Lengths } from "../useLengths.ts";

/** What the search found, in sentences. */
export function bestWords({ pick, start, isStartBest, front, dots, notes }: BestPicture, lengths: Lengths): string[] {
  if (front.length === 0) return ["The pair as it is has been solved; the search through the others is on its way."];
  const words: string[] = [];
  if (isStartBest)
    words.push(
      "By your weights nothing within the bounds is better than the plan as it is. Other weights or bounds may find something.",
    );
  else {
    const coil = pick.coil_ohm > 0 ? `, with ${figure(pick.coil_ohm, 1)} Ω of coil under the reflector` : "";
    const now = start.figures;
    const then = pick.figures;
    words.push(
      `By your weights the best is a driven of ${lengths.near(pick.driven_m)} and a reflector of ${lengths.near(pick.reflector_m)}, ${lengths.near(pick.spacing_m)} apart${coil}.`,
      `Against the plan as it is: ${signedFigure(then.forward_dBi - now.forward_dBi, 1)} dB ahead, ${signedFigure(then.frontToBack_dB - now.frontToBack_dB, 1)} dB front to back, ${signedFigure(then.frontToRear_dB - now.frontToRear_dB, 1)} dB front to worst behind, SWR ${figure(then.swr, 2)} instead of ${figure(now.swr, 2)}.`,
    );
  }
  words.push(
    `${dots.length} designs were found of which none is bettered in everything; ${front.length} of them, spread over the trade, stand below.`,
    ...notes.map((note) => note.message),
  );
  return words;
}
