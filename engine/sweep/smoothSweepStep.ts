import type { BandReadout, BandRequest, PlanReadout } from "../readouts/PlanReadout.ts";
import { swr } from "../readouts/swr.ts";
import { curveThrough } from "./curveThrough.ts";

/** One solved frequency of a sweep. */
export interface SweepSample {
  readonly frequency_MHz: number;
  readonly feeds: PlanReadout["feeds"];
}

/** What a sweep that is given `samples` needs next, or that it is done. */
export type SmoothSweepStep =
  | { readonly kind: "solve"; readonly frequency_MHz: number }
  | { readonly kind: "done"; readonly band: BandReadout };

/** Solved before the first check is believed; a check on fewer can agree by chance. */
const FEWEST = 4;
const MOST = 15;
/** A check must agree to this, or to this part of the impedance, whichever is more. */
const AGREED_OHM = 0.3;
const AGREED_PART = 0.01;
/** Places where the next frequency is looked for. */
const GRID = 200;

/**
 * A band's feed impedances from few solves: a polynomial through those solved so far, in barycentric form. The next
 * frequency is where the polynomial's error term |Π (f − fᵢ)| is largest (a Leja sequence, which starts at the edges
 * and the middle and fills the band as Chebyshev's points do), so each solve is first a check of the polynomial through
 * the others, where that is most likely wrong. Once a check agrees to 0.3 ohm or 1 %, the curve through all of them is
 * the answer, and the check's difference is stated as its error. After 15 solves the sweep ends, agreed or not.
 *
 * A pure step, so that who drives it can stop between solves. `samples` are in the order they were solved.
 */
export function smoothSweepStep(request: BandRequest, samples: readonly SweepSample[]): SmoothSweepStep {
  const { from_MHz, to_MHz } = request;
  if (samples.length > FEWEST) {
    const error_ohm = checkOf(samples);
    if (error_ohm.isAgreed || samples.length >= MOST)
      return { kind: "done", band: drawn(request, samples, error_ohm.ohm) };
  }
  if (samples.length === 0) return { kind: "solve", frequency_MHz: from_MHz };
  let next_MHz = to_MHz;
  let largest = 0;
  for (let i = 0; i <= GRID; i++) {
    const f = from_MHz + ((to_MHz - from_MHz) * i) / GRID;
    let term = 1;
    for (const { frequency_MHz } of samples) term *= Math.abs(f - frequency_MHz) / (to_MHz - from_MHz);
    if (term > largest) {
      largest = term;
      next_MHz = f;
    }
  }
  return { kind: "solve", frequency_MHz: next_MHz };
}

/** How far the newest sample lies from the curve through the others, in the feed where that is farthest. */
function checkOf(samples: readonly SweepSample[]): { ohm: number; isAgreed: boolean } {
  const before = samples.slice(0, -1);
  const newest = samples.at(-1)!;
  let ohm = 0;
  let isAgreed = true;
  newest.feeds.forEach(({ impedance_ohm: { re, im } }, i) => {
    const curve = curveThrough(before.map((sample) => pointOf(sample, i)));
    const at = curve(newest.frequency_MHz);
    const away = Math.sqrt((at.re - re) ** 2 + (at.im - im) ** 2);
    ohm = Math.max(ohm, away);
    isAgreed &&= away < Math.max(AGREED_OHM, AGREED_PART * Math.sqrt(re * re + im * im));
  });
  return { ohm, isAgreed };
}

const pointOf = ({ frequency_MHz, feeds }: SweepSample, feed: number) => ({
  at: frequency_MHz,
  ...feeds[feed]!.impedance_ohm,
});

function drawn(
  { from_MHz, to_MHz, points }: BandRequest,
  samples: readonly SweepSample[],
  error_ohm: number,
): BandReadout {
  const frequency_MHz = Array.from({ length: points }, (_, i) => from_MHz + ((to_MHz - from_MHz) * i) / (points - 1));
  return {
    frequency_MHz,
    feeds: samples[0]!.feeds.map(({ elementId }, i) => {
      const curve = curveThrough(samples.map((sample) => pointOf(sample, i)));
      const z = frequency_MHz.map(curve);
      return {
        elementId,
        resistance_ohm: z.map(({ re }) => re),
        reactance_ohm: z.map(({ im }) => im),
        swr50: z.map(({ re, im }) => swr(re, im, 50)),
      };
    }),
    interpolated: { solved_MHz: samples.map((sample) => sample.frequency_MHz), error_ohm },
  };
}
