import { type ArraySample, arraySample, askKey, failed, ok, type Result, type Trial } from "../../engine/index.ts";

/** Runs a trial to its end where one stands, one solve after the other, telling before each which part of it is done. */
export function driveInPlace<R>(trial: Trial<R>, onPart?: (part: number) => void): Result<R> {
  const known = new Map<string, Result<ArraySample>>();
  for (;;) {
    const step = trial((ask) => known.get(askKey(ask)));
    if (!step.ok) return step;
    const { asks, picture, part } = step.value;
    if (asks.length === 0)
      return picture ? ok(picture) : failed({ code: "no-picture", where: "", message: "Nothing could be solved." });
    asks.forEach((ask, i) => {
      known.set(askKey(ask), arraySample(ask));
      onPart?.(part + ((1 - part) * (i + 1)) / (2 * asks.length));
    });
  }
}
