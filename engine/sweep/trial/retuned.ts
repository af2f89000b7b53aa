import type { ElementPlan } from "../../contract.ts";
import type { ArrayChart } from "./ArrayChart.ts";
import type { ReadFigures } from "./figuresReader.ts";
import { indexOfMost } from "./indexOfMost.ts";

interface Between {
  readonly from: number;
  readonly to: number;
}

export interface Retuned {
  readonly driven_m: number;
  readonly reflector_m: number;
  /** The best front-to-back lies at an end of the reflector's range, or no length of the driven is resonant. */
  readonly isAtLimit: boolean;
}

/** Each depends a little on the other: by then lengths stand to 0.1 mm. */
const ROUNDS = 4;
const SCAN = 12;
const HALVINGS = 24;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Lengths of a pair at which straight-back is quietest against ahead and the driven is resonant (X = 0), by turns: the
 * reflector by a scan and golden sections, the driven by a scan from short to long for where X comes up through 0, and
 * bisection. Where X does not, the length at which it is least.
 *
 * @param chart over the driven's length and the reflector's
 */
export function retuned(
  chart: ArrayChart,
  elements: readonly ElementPlan[],
  read: ReadFigures,
  driven: Between,
  reflector: Between,
): Retuned {
  const at = (d: number, r: number) => read(elements, chart.sampleAt([d, r]));
  let driven_m = (driven.from + driven.to) / 2;
  let reflector_m = (reflector.from + reflector.to) / 2;
  let isResonant = true;
  for (let round = 0; round < ROUNDS; round++) {
    const fixed = chart.fix(driven_m);
    const near = (range: Between, length: number) => (round === 0 ? range : around(range, length));
    reflector_m = mostAt(near(reflector, reflector_m), (r) => read(elements, fixed.sampleAt([r])).frontToBack_dB);
    const reactance = (d: number) => at(d, reflector_m).feeds[0]!.impedance_ohm.im;
    let resonant = risingZero(near(driven, driven_m), reactance);
    if (!resonant.isZero && round > 0) resonant = risingZero(driven, reactance);
    isResonant = resonant.isZero;
    driven_m = resonant.at;
  }
  const end = (reflector.to - reflector.from) * 1e-4;
  const isInside = reflector_m > reflector.from + end && reflector_m < reflector.to - end;
  return { driven_m, reflector_m, isAtLimit: !isInside || !isResonant };
}

const placesOf = ({ from, to }: Between) => Array.from({ length: SCAN + 1 }, (_, i) => from + ((to - from) * i) / SCAN);

/** A sixth of a range, about a length: turns change it by less. */
function around({ from, to }: Between, length: number): Between {
  const half = (to - from) / 12;
  return { from: Math.max(from, length - half), to: Math.min(to, length + half) };
}

function mostAt(range: Between, of: (x: number) => number): number {
  const places = placesOf(range);
  const most = indexOfMost(places.map(of));
  let low = places[Math.max(0, most - 1)]!;
  let high = places[Math.min(SCAN, most + 1)]!;
  let a = high - GOLDEN * (high - low);
  let b = low + GOLDEN * (high - low);
  let [ofA, ofB] = [of(a), of(b)];
  // Near its top a curve is flat: lengths nearer than 1e-4 of the range tell nothing apart.
  while (high - low > 1e-4 * (range.to - range.from)) {
    if (ofA > ofB) {
      [high, b, ofB] = [b, a, ofA];
      a = high - GOLDEN * (high - low);
      ofA = of(a);
    } else {
      [low, a, ofA] = [a, b, ofB];
      b = low + GOLDEN * (high - low);
      ofB = of(b);
    }
  }
  return (low + high) / 2;
}

function risingZero(range: Between, of: (x: number) => number): { readonly at: number; readonly isZero: boolean } {
  const places = placesOf(range);
  const values = places.map(of);
  const first = values.findIndex((value, i) => i < SCAN && value <= 0 && values[i + 1]! > 0);
  if (first < 0) return { at: places[indexOfMost(values.map((value) => -Math.abs(value)))]!, isZero: false };
  let [low, high] = [places[first]!, places[first + 1]!];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (of(middle) > 0) high = middle;
    else low = middle;
  }
  return { at: (low + high) / 2, isZero: true };
}
