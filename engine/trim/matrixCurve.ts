import type { Complex, Plan } from "../contract.ts";
import { cx } from "../network/cx.ts";
import { ok, type Result } from "../result.ts";
import { curveThrough } from "../sweep/curveThrough.ts";
import type { ArraySample } from "../sweep/trial/arraySample.ts";
import { lejaPoints } from "../sweep/trial/lejaPoints.ts";
import type { Known, TrialAsk } from "../sweep/trial/Trial.ts";
import type { BaseMatrix } from "./meterReading.ts";

const FEWEST = 5;
const MOST = 13;
/** The newest node must agree with the curve through the others to this, or to this part of the impedance. */
const AGREED_OHM = 0.1;
const AGREED_PART = 0.003;
const nowhere = { elevations_deg: [], azimuths_deg: [] } as const;

/** Base impedances of a plan over frequency from few solves. */
export interface MatrixCurve {
  at(frequency_MHz: number): BaseMatrix;
  /** How far the last node was from the curve through the others [ohm]; elsewhere it is of the same order. */
  readonly error_ohm: number;
}

/** Either solves that are still needed, or the curve. */
export interface MatrixCurveStep {
  readonly asks: readonly TrialAsk[];
  readonly curve?: MatrixCurve;
}

/**
 * The matrix of base impedances between two frequencies: polynomials through solves at the nodes of a Leja sequence, the
 * latest of which checks the rest (0.1 ohm, or 0.3 % of the impedance). After 13 it ends, agreed or not; `error_ohm` says
 * which. A pure step: who drives it answers `asks` and comes again.
 */
export function matrixCurve(plan: Plan, from_MHz: number, to_MHz: number, known: Known): Result<MatrixCurveStep> {
  const nodes = lejaPoints(MOST).map((t) => from_MHz + ((t + 1) / 2) * (to_MHz - from_MHz));
  const samples: ArraySample[] = [];
  const missing: TrialAsk[] = [];
  for (const [n, frequency_MHz] of nodes.entries()) {
    if (n >= FEWEST && (missing.length > 0 || agreed(samples))) break;
    const ask: TrialAsk = { plan, frequency_MHz, directions: nowhere };
    const answer = known(ask);
    if (!answer) missing.push(ask);
    else if (!answer.ok) return answer;
    else samples.push(answer.value);
  }
  if (missing.length > 0) return ok({ asks: missing });
  return ok({ asks: [], curve: { at: curveOf(samples), error_ohm: newestOff(samples).off_ohm } });
}

const agreed = (samples: readonly ArraySample[]) => newestOff(samples).isAgreed;

function newestOff(samples: readonly ArraySample[]): { readonly off_ohm: number; readonly isAgreed: boolean } {
  const newest = samples.at(-1)!;
  const guess = curveOf(samples.slice(0, -1))(newest.frequency_MHz);
  let off_ohm = 0;
  let isAgreed = true;
  matrixOf(newest).forEach((row, i) => {
    row.forEach((z, j) => {
      const off = cx.abs(cx.sub(z, guess[i]![j]!));
      off_ohm = Math.max(off_ohm, off);
      isAgreed &&= off < Math.max(AGREED_OHM, AGREED_PART * cx.abs(z));
    });
  });
  return { off_ohm, isAgreed };
}

function curveOf(samples: readonly ArraySample[]): (frequency_MHz: number) => BaseMatrix {
  const matrices = samples.map(matrixOf);
  const curves = matrices[0]!.map((row, i) =>
    row.map((_, j) =>
      curveThrough(samples.map(({ frequency_MHz }, s) => ({ at: frequency_MHz, ...matrices[s]![i]![j]! }))),
    ),
  );
  return (f) => curves.map((row) => row.map((curve) => curve(f)));
}

/** A sample's impedances as rows. */
export function matrixOf({ impedance_ohm: z }: ArraySample): readonly (readonly Complex[])[] {
  const P = Math.round(Math.sqrt(z.length / 2));
  return Array.from({ length: P }, (_, i) =>
    Array.from({ length: P }, (_, j) => ({ re: z[2 * (i * P + j)]!, im: z[2 * (i * P + j) + 1]! })),
  );
}
