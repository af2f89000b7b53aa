import type { OnAirPair } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { leastPairs, mostError_dB, type PairStatistics, pairStatistics, pairVerdict } from "./pairStatistics.ts";

/** What the pairs say, in words first. */
export function Verdict({ pairs }: { readonly pairs: readonly OnAirPair[] }) {
  const found = pairStatistics(pairs);
  if (!found) return null;
  const { median_dB, middleHalf_dB, deviation_dB, error_dB, count } = found;
  return (
    <section className="fr-verdict" aria-label="What the pairs say" aria-live="polite">
      <p className="fr-verdict-words">{headline(found)}</p>
      <p>{why(found)}</p>
      <p className="fr-small">
        {count === 1 ? "1 pair" : `${count} pairs`}: median {signedFigure(median_dB, 1)} dB, the middle half between{" "}
        {signedFigure(middleHalf_dB[0], 1)} and {signedFigure(middleHalf_dB[1], 1)} dB
        {deviation_dB !== null &&
          error_dB !== null &&
          `; spread (standard deviation) ${figure(deviation_dB, 1)} dB, standard error of the median ${figure(error_dB, 1)} dB`}
        .
      </p>
    </section>
  );
}

function headline(found: PairStatistics): string {
  const { median_dB, error_dB } = found;
  const size = `${figure(Math.abs(median_dB), 1)} dB`;
  switch (pairVerdict(found)) {
    case "proven":
      return `${size} ${median_dB > 0 ? "louder forward" : "louder reversed"}, give or take ${figure(2 * error_dB!, 1)} dB`;
    case "no-difference":
      return "Not proven: no difference that stands out of the fading";
    case "few":
    case "wide":
    case "nothing":
      return "Not proven";
  }
}

function why(found: PairStatistics): string {
  const { count, error_dB, deviation_dB, median_dB } = found;
  // √(π/2) s/√N = limit, solved for N.
  const needed =
    deviation_dB === null ? leastPairs : Math.ceil(((Math.PI / 2) * deviation_dB ** 2) / mostError_dB ** 2);
  switch (pairVerdict(found)) {
    case "few":
      return `${count} of at least ${leastPairs} pairs${needed > leastPairs ? `; as these spread, about ${needed} will be wanted` : ""}. A few pairs prove nothing while signals fade.`;
    case "wide":
      return `The readings spread so widely that the median is unsure by ${figure(error_dB!, 1)} dB; about ${needed} pairs would bring that to ${figure(mostError_dB, 1)} dB.`;
    case "no-difference":
      return `The median, ${signedFigure(median_dB, 1)} dB, lies within twice its standard error, ${figure(2 * error_dB!, 1)} dB. More pairs may tell.`;
    case "proven":
      return "The median stands out by more than twice its standard error. It holds for this station, this band and this day: the elevation its signal came from is not known.";
    case "nothing":
      return "";
  }
}
