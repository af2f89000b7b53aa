import type { FeedFacts, FrequencySpan } from "./feedFacts.ts";
import { figure } from "./figure.ts";
import { megahertz } from "./megahertz.ts";

/** Below this the lowest SWR and X = 0 are one place for anyone with a saw. */
const sameFrequency_MHz = 0.004;

/** What a feedpoint does across the band, a sentence each. */
export function feedWords(facts: FeedFacts, span: FrequencySpan): string[] {
  const { lowest, resonances, under2 } = facts;
  if (!lowest) return ["No figures across the band yet."];
  const said = [`Lowest SWR ${figure(lowest.swr, 2)} at ${megahertz(lowest.frequency_MHz)} MHz.`];

  const nearest = resonances.toSorted(
    (a, b) => Math.abs(a.frequency_MHz - lowest.frequency_MHz) - Math.abs(b.frequency_MHz - lowest.frequency_MHz),
  )[0];
  if (!nearest) said.push("X does not pass through zero in this span.");
  else {
    const apart = Math.abs(nearest.frequency_MHz - lowest.frequency_MHz);
    const zero = `X = 0 at ${megahertz(nearest.frequency_MHz)} MHz, where R is ${figure(nearest.resistance_ohm, 0)} Ω`;
    said.push(
      apart > sameFrequency_MHz
        ? `${zero}: ${figure(apart * 1000, 0)} kHz from the lowest SWR, because R is not 50 Ω. Neither is a fault.`
        : `${zero}: the same place as the lowest SWR, near enough.`,
    );
  }

  const width = span.to_MHz - span.from_MHz;
  const covered = under2.reduce((sum, s) => sum + s.to_MHz - s.from_MHz, 0) / width;
  if (under2.length === 0) said.push("Nowhere in the band is the SWR 2 or less.");
  else if (covered > 0.9995) said.push("The SWR is 2 or less over the whole band.");
  else {
    const parts = under2.map((s) => `${megahertz(s.from_MHz)}–${megahertz(s.to_MHz)}`).join(" and ");
    said.push(`The SWR is 2 or less over ${parts} MHz, ${figure(covered * 100, 0)} % of the band.`);
  }
  return said;
}
