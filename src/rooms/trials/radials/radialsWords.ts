import type { HeightBudget, RadialsPicture } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import type { Lengths } from "../useLengths.ts";
import { heightName, layingText } from "./layingText.ts";

/** What the wire buys, in sentences. */
export function radialsWords(picture: RadialsPicture, lengths: Lengths): string[] {
  const { best, own, heights, wire_m, knee_dBPer10m, notes } = picture;
  const words = [
    `${lengths.near(wire_m)} of wire does most as ${layingText(best, lengths)}, ${heightName(best.height_m, lengths)}: ${figure(best.forward_dBi, 2)} dBi ahead.`,
  ];
  if (own) {
    const gain_dB = best.forward_dBi - own.forward_dBi;
    words.push(
      Math.abs(gain_dB) < 0.05
        ? "That is as loud as the plan’s own radials are."
        : `That is ${figure(Math.abs(gain_dB), 1)} dB ${gain_dB > 0 ? "louder" : "quieter"} than the plan’s own ${lengths.near(own.wire_m)}.`,
    );
  }
  for (const one of heights) words.push(...kneeWords(one, knee_dBPer10m, lengths));
  const [first, second] = heights;
  if (first && second) {
    const more = second.best.forward_dBi - first.best.forward_dBi;
    words.push(
      `${cap(heightName(second.height_m, lengths))} against ${heightName(first.height_m, lengths)}: ${figure(Math.abs(more), 1)} dB ${more >= 0 ? "louder" : "quieter"}.`,
    );
  }
  return [...words, ...notes.map((note) => note.message)];
}

function kneeWords({ height_m, knee_m, cutShort }: HeightBudget, kneeAt: number, lengths: Lengths): string[] {
  const name = cap(heightName(height_m, lengths));
  const ten = lengths.round(10);
  const words = [
    knee_m === null
      ? `${name}: as far as was tried, ${ten} more bring ${kneeAt} dB or more.`
      : `${name}: from ${lengths.round(knee_m)} on, ${ten} more bring less than ${kneeAt} dB.`,
  ];
  const worst = cutShort.toSorted((a, b) => b.gain_dB - a.gain_dB)[0];
  if (worst)
    words.push(
      `${name}, using it all can hurt: ${layingText(worst.asLong, lengths)} would be ${figure(worst.gain_dB, 1)} dB quieter than as many cut shorter, ${layingText(worst.shorter, lengths)}.`,
    );
  return words;
}

const cap = (text: string) => text[0]!.toUpperCase() + text.slice(1);
