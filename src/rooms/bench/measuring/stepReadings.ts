import type { BenchReading, ExpectedStep } from "../../../../engine/index.ts";

/** Lengths nearer than a saw cut are the same. */
const same_m = 0.001;

/** Length of the wire that the meter is at. */
const readLength = (state: BenchReading["state"], lengths: BenchReading["lengths_m"]) =>
  state === "reflector-alone" || state === "reversed" ? (lengths.reflector_m ?? lengths.driven_m) : lengths.driven_m;

/**
 * The readings that belong to a step: of its state, and taken at lengths nearer to this step's than to any other step's
 * of that state. Steps that are of one state and length share them.
 */
export function readingsOfStep(
  step: ExpectedStep,
  steps: readonly ExpectedStep[],
  readings: readonly BenchReading[],
): readonly BenchReading[] {
  const { state } = step;
  if (state === undefined) return [];
  const offFrom = (reading: BenchReading, other: ExpectedStep) =>
    Math.abs(readLength(state, other.lengths_m) - readLength(state, reading.lengths_m));
  return readings.filter((reading) => {
    if (reading.state !== state) return false;
    const nearest = Math.min(...steps.filter((one) => one.state === state).map((one) => offFrom(reading, one)));
    return offFrom(reading, step) <= nearest + same_m;
  });
}
