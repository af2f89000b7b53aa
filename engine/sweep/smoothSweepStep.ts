import type { BandReadout, BandRequest } from "../readouts/PlanReadout.ts";
import { swr } from "../readouts/swr.ts";
import type { BandSample } from "./bandSample.ts";
import { gainOf } from "./beamField.ts";
import { curveThrough } from "./curveThrough.ts";

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
/** … the gain ahead to this, and the field behind to this part of the field ahead, 40 dB below it. */
const AGREED_dB = 0.03;
const AGREED_BEHIND = 0.01;
/** Places where the next frequency is looked for. */
const GRID = 200;

/**
 * A band's feed impedances from few solves: a polynomial through those solved so far, in barycentric form. The next
 * frequency is where the polynomial's error term |Π (f − fᵢ)| is largest (a Leja sequence, which starts at the edges
 * and the middle and fills the band as Chebyshev's points do), so each solve is first a check of the polynomial through
 * the others, where that is most likely wrong. Once a check agrees to 0.3 ohm or 1 %, and with the beam
 * to 0.03 dB ahead and 40 dB below that behind, the curve through all of them is the answer, and the check's difference is
 * stated as its error. After 15 solves the sweep ends, agreed or not.
 *
 * Accuracy: the check is made at one frequency. Between the solves the impedance lies within twice the error stated and
 * 1e-3 ohm, the beam within twice and 1e-4 dB (soil preview against every frequency solved, one to three elements, bands
 * 0.2 to 20 % wide, which took 5 to 15 solves). It is fields that are compared: where the gain ahead itself dips within the
 * band, decibels there are off by more in that proportion. Where a band wider than that is not agreed after 15, the beam
 * was seen seven times as far off as stated.
 *
 * A pure step, so that who drives it can stop between solves. `samples` are in the order they were solved.
 */
export function smoothSweepStep(request: BandRequest, samples: readonly BandSample[]): SmoothSweepStep {
  const { from_MHz, to_MHz } = request;
  if (samples.length > FEWEST) {
    const check = checkOf(samples);
    if (check.isAgreed || samples.length >= MOST) return { kind: "done", band: drawn(request, samples, check) };
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

interface Check {
  readonly isAgreed: boolean;
  readonly error_ohm: number;
  readonly error_dB?: number;
  readonly errorBehind?: number;
}

/** How far the newest sample lies from the curve through the others, in the feed where that is farthest. */
function checkOf(samples: readonly BandSample[]): Check {
  const before = samples.slice(0, -1);
  const newest = samples.at(-1)!;
  let error_ohm = 0;
  let isAgreed = true;
  newest.feeds.forEach(({ impedance_ohm: { re, im } }, i) => {
    const at = curveThrough(before.map((sample) => feedPoint(sample, i)))(newest.frequency_MHz);
    const away = Math.sqrt((at.re - re) ** 2 + (at.im - im) ** 2);
    error_ohm = Math.max(error_ohm, away);
    isAgreed &&= away < Math.max(AGREED_OHM, AGREED_PART * Math.sqrt(re * re + im * im));
  });
  if (!newest.beam) return { isAgreed, error_ohm };
  const ahead = fieldCurve(before, "ahead")(newest.frequency_MHz);
  const behind = fieldCurve(before, "behind")(newest.frequency_MHz);
  const resistance = resistanceCurve(before)(newest.frequency_MHz);
  const { beam } = newest;
  const off = size(ahead.map((v, i) => v - beam.ahead[i]!)) / size(beam.ahead);
  // The whole difference of the fields, whatever its phase: nearby it may turn into one of size.
  const error_dB = 20 * Math.log10(1 + off) + Math.abs(10 * Math.log10(resistance / beam.resistance_ohm));
  const errorBehind = size(behind.map((v, i) => v - beam.behind[i]!)) / size(beam.ahead);
  isAgreed &&= error_dB < AGREED_dB && errorBehind < AGREED_BEHIND;
  return { isAgreed, error_ohm, error_dB, errorBehind };
}

const size = (parts: readonly number[]) => Math.sqrt(parts.reduce((sum, v) => sum + v * v, 0));

const feedPoint = ({ frequency_MHz, feeds }: BandSample, feed: number) => ({
  at: frequency_MHz,
  ...feeds[feed]!.impedance_ohm,
});

/** The four parts of the field one way, as curves over frequency. */
function fieldCurve(samples: readonly BandSample[], way: "ahead" | "behind"): (f: number) => number[] {
  const part = (c: number) =>
    curveThrough(
      samples.map(({ frequency_MHz, beam }) => ({ at: frequency_MHz, re: beam![way][c]!, im: beam![way][c + 1]! })),
    );
  const [theta, phi] = [part(0), part(2)];
  return (f) => [theta(f), phi(f)].flatMap(({ re, im }) => [re, im]);
}

function resistanceCurve(samples: readonly BandSample[]): (f: number) => number {
  const curve = curveThrough(
    samples.map(({ frequency_MHz, beam }) => ({ at: frequency_MHz, re: beam!.resistance_ohm, im: 0 })),
  );
  return (f) => curve(f).re;
}

function drawn(
  { from_MHz, to_MHz, points, elevation_deg }: BandRequest,
  samples: readonly BandSample[],
  { error_ohm, error_dB, errorBehind }: Check,
): BandReadout {
  const frequency_MHz = Array.from({ length: points }, (_, i) => from_MHz + ((to_MHz - from_MHz) * i) / (points - 1));
  const beamed = elevation_deg !== undefined && samples.every((sample) => sample.beam);
  const curves = beamed && {
    ahead: fieldCurve(samples, "ahead"),
    behind: fieldCurve(samples, "behind"),
    resistance: resistanceCurve(samples),
  };
  return {
    frequency_MHz,
    feeds: samples[0]!.feeds.map(({ elementId }, i) => {
      const z = frequency_MHz.map(curveThrough(samples.map((sample) => feedPoint(sample, i))));
      return {
        elementId,
        resistance_ohm: z.map(({ re }) => re),
        reactance_ohm: z.map(({ im }) => im),
        swr50: z.map(({ re, im }) => swr(re, im, 50)),
      };
    }),
    ...(curves && {
      beam: {
        elevation_deg,
        forward_dBi: frequency_MHz.map((f) => gainOf(curves.ahead(f), curves.resistance(f))),
        frontToBack_dB: frequency_MHz.map((f) => gainOf(curves.ahead(f), 1) - gainOf(curves.behind(f), 1)),
      },
    }),
    interpolated: {
      solved_MHz: samples.map((sample) => sample.frequency_MHz),
      error_ohm,
      ...(error_dB !== undefined && { error_dB }),
      ...(errorBehind !== undefined && { errorBehind }),
    },
  };
}
