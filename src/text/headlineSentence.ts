import type { Rung } from "../../engine/index.ts";
import { bearingText } from "../charts/bearing.ts";
import { powerInWords } from "./powerInWords.ts";
import { sUnitsInWords } from "./sUnitsInWords.ts";

interface Said {
  /** The live design at the path's elevation. */
  readonly now: Rung;
  /** The baseline there; null when none is pinned. */
  readonly before: Rung | null;
  /** True bearing of the beam; absent: the plan does not say. */
  readonly heading_deg?: number | undefined;
}

/** What the design buys, in plain words. Decibels are left to the figures beside it. */
export function headlineSentence({ now, before, heading_deg }: Said): string {
  const ahead = heading_deg === undefined ? "Straight ahead" : `Toward ${bearingText(heading_deg)}`;
  if (!before) return comparedWithin(now, ahead);
  return `${gained(now.forward_dBi - before.forward_dBi, ahead)}; ${behind(now.back_dBi - before.back_dBi)}.`;
}

function gained(change_dB: number, ahead: string): string {
  if (!Number.isFinite(change_dB)) return `${ahead} there is nothing to compare`;
  if (Math.abs(change_dB) < 0.05) return `${ahead} you are heard just as before`;
  return `${ahead} you are heard as if 100 W were ${powerInWords(change_dB)}`;
}

function behind(change_dB: number): string {
  if (change_dB === Number.NEGATIVE_INFINITY) return "from straight behind, nothing is heard";
  if (!Number.isFinite(change_dB)) return "straight behind there is nothing to compare";
  const units = sUnitsInWords(change_dB);
  if (!units) return "from straight behind, stations hardly change";
  return `from straight behind, stations ${change_dB < 0 ? "drop" : "rise"} by ${units} (6 dB each)`;
}

/** Without a baseline only the design's own directions can be set against each other. */
function comparedWithin(now: Rung, ahead: string): string {
  const units = sUnitsInWords(now.frontToBack_dB);
  if (!Number.isFinite(now.frontToBack_dB)) return `${ahead} and straight behind cannot be compared.`;
  if (!units) return `${ahead} and straight behind, stations are about equally loud.`;
  const louder = now.frontToBack_dB > 0 ? "stronger" : "weaker";
  return `${ahead}, stations are ${units} (6 dB each) ${louder} than straight behind. Pin a design to see what a change buys.`;
}
