import { figure, signedFigure } from "../../../charts/figure.ts";
import type { PairRow } from "./pairState.ts";

/** Differences that would be noticed on the air; a yardstick of this page, said with the verdict. */
const ahead_dB = 1;
const behind_dB = 6;

export interface PairVerdict {
  readonly headline: string;
  readonly said: readonly string[];
  /** The harness it speaks of. */
  readonly best: PairRow["id"] | null;
}

/**
 * Is the harness worth it? In words, with the numbers they rest on: every gain at the path's elevation against the one
 * vertical. "Best harness": the one that is quietest in its worst direction behind, its loss taken off ahead.
 */
export function pairVerdict(rows: readonly PairRow[], elevation_deg: number): PairVerdict {
  const by = (id: PairRow["id"]) => rows.find((row) => row.id === id && row.readout !== null);
  const single = by("single");
  const parasitic = by("parasitic");
  const ideal = by("ideal");
  const real = rows.filter((row) => row.harness && row.readout);
  if (!single || !parasitic || !ideal) return { headline: "No verdict yet.", said: [], best: null };
  const gained = (row: PairRow) => row.gain_dBi - single.gain_dBi;
  const worst = (row: PairRow) => row.readout!.path.frontToRear_dB;
  const back = (row: PairRow) => row.readout!.path.frontToBack_dB;
  const figures = (row: PairRow) =>
    `${signedFigure(gained(row), 1)} dB ahead, ${figure(back(row), 1)} dB front-to-back, ${figure(worst(row), 1)} dB to the worst direction behind`;
  const best = [...real].sort((a, b) => worst(b) - worst(a))[0];
  const said = [
    `At ${figure(elevation_deg, 0)}°, against one vertical: the reflector gives ${figures(parasitic)}, with one feedpoint and no harness.`,
    `Both fed with exactly the currents wanted: ${figures(ideal)}.`,
  ];
  if (!best) {
    return {
      headline: "None of the harnesses can be made for these currents.",
      said: [...said, "Why not stands in the table."],
      best: null,
    };
  }
  const more = gained(best) - gained(parasitic);
  const quieter = worst(best) - worst(parasitic);
  said.push(
    `The best of the harnesses behind (${best.name}) gives ${figures(best)}, its own loss of ${figure(best.harness!.loss_dB, 2)} dB taken off: ${signedFigure(more, 1)} dB ahead and ${behindWords(quieter)} against the reflector.`,
  );
  const delay = real.find((row) => row.id === "delay");
  if (delay)
    said.push(
      `The delay line by length alone does not make the currents it is cut for: ${figures(delay)}. The bases of a coupled pair are no 50\u00a0Ω resistors.`,
    );
  said.push(
    `Counted as worth having here: ${figure(ahead_dB, 0)} dB ahead, or ${figure(behind_dB, 0)} dB (an S-unit) in the worst direction behind. That line is ours; draw your own.`,
  );
  const isLouder = more >= ahead_dB;
  const isQuieter = quieter >= behind_dB;
  const isWorse = more <= -ahead_dB || quieter <= -behind_dB;
  const headline =
    isLouder || isQuieter
      ? isWorse
        ? `A trade, with these currents: ${signedFigure(more, 1)} dB ahead, ${behindWords(quieter)}.`
        : `With these currents the harness buys something: ${signedFigure(more, 1)} dB ahead, ${behindWords(quieter)}.`
      : isWorse
        ? `Not worth it with these currents: the reflector is the better array (${signedFigure(more, 1)} dB ahead, ${behindWords(quieter)} with the harness).`
        : `Hardly worth it with these currents: ${signedFigure(more, 1)} dB ahead and ${behindWords(quieter)}.`;
  return { headline, said, best: best.id };
}

/** In the worst direction behind, against the reflector. */
const behindWords = (quieter_dB: number) =>
  `${figure(Math.abs(quieter_dB), 1)} dB ${quieter_dB < 0 ? "louder" : "quieter"} behind`;
