import type { BenchState } from "../plan/PlanBench.ts";
import { type CurveFigures, curveFigures } from "./curveFigures.ts";
import type { Expected, ExpectedFigures, ExpectedStep } from "./ExpectedSheet.ts";
import type { StepsInput } from "./expectedSteps.ts";
import type { MatrixCurve } from "./matrixCurve.ts";
import { meterReading } from "./meterReading.ts";

/** Points of the curve that is kept for drawing. */
const DRAWN = 61;
/**
 * Readings of one antenna repeat to about 2 ohm or 5 percent (a measurer's report of a large array); the model itself is
 * good to about one ohm where its soil is right.
 */
const REPEAT_OHM = 2;
const REPEAT_PART = 0.05;

/** The least and greatest of some figures, the first being the expected one. */
export function spread(values: readonly number[]): Expected {
  return { value: values[0]!, low: Math.min(...values), high: Math.max(...values) };
}

/**
 * Figures of one state, and how well a reading can be asked to agree. The soils' range is found at the plan's lengths; at
 * other lengths it is taken to be as wide.
 */
export function expectedFigures(
  { plan, roles, from_MHz, to_MHz, planned, otherSoils }: StepsInput,
  state: BenchState,
  curve: MatrixCurve,
): Required<Pick<ExpectedStep, "figures" | "tolerance">> {
  const along = (c: MatrixCurve) => (f: number) => meterReading(plan, roles, c.at(f), state).impedance_ohm;
  const read = (c: MatrixCurve) => curveFigures(along(c), from_MHz, to_MHz, plan.frequency_MHz);
  const here = read(curve);
  const base = curve === planned ? here : read(planned);
  const others = otherSoils.map(read);
  const ranged = (of: (figures: CurveFigures) => number): Expected => {
    const [at, middle] = [of(here), of(base)];
    return spread([at, ...others.map((o) => at + of(o) - middle)]);
  };
  // A soil in which X never passes through 0 says nothing about where it does.
  const resonant = others.flatMap(({ resonance }) => resonance ?? []);
  const resonance = (key: "frequency_MHz" | "resistance_ohm"): Expected | null => {
    if (!here.resonance) return null;
    const at = here.resonance[key];
    const middle = base.resonance?.[key] ?? at;
    return spread([at, ...resonant.map((r) => at + r[key] - middle)]);
  };
  const figures: ExpectedFigures = {
    resonance_MHz: resonance("frequency_MHz"),
    resonanceResistance_ohm: resonance("resistance_ohm"),
    resistance_ohm: ranged(({ target_ohm }) => target_ohm.re),
    reactance_ohm: ranged(({ target_ohm }) => target_ohm.im),
    swr: notBelowOne(ranged((f) => f.swr)),
    leastSwr: notBelowOne(ranged((f) => f.leastSwr)),
    leastSwr_MHz: ranged((f) => f.leastSwr_MHz),
    curve: Array.from({ length: DRAWN }, (_, i) => {
      const frequency_MHz = from_MHz + ((to_MHz - from_MHz) * i) / (DRAWN - 1);
      return { frequency_MHz, impedance_ohm: along(curve)(frequency_MHz) };
    }),
  };
  const resistance_ohm = Math.max(REPEAT_OHM, REPEAT_PART * here.target_ohm.re);
  return {
    figures,
    tolerance: {
      resistance_ohm,
      reactance_ohm: resistance_ohm,
      resonance_kHz: (1e3 * resistance_ohm) / Math.abs(here.reactanceSlope),
    },
  };
}

const notBelowOne = ({ value, low, high }: Expected): Expected => ({ value, low: Math.max(1, low), high });
