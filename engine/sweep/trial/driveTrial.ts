import { failed, ok, type Result } from "../../result.ts";
import { type ArraySample, arraySample } from "./arraySample.ts";
import { askKey } from "./askKey.ts";
import type { Trial } from "./Trial.ts";

/** A trial run to its end in place, every ask solved in turn. */
export function driveTrial<R>(trial: Trial<R>): Result<R> {
  const kept = new Map<string, Result<ArraySample>>();
  for (;;) {
    const step = trial((ask) => kept.get(askKey(ask)));
    if (!step.ok) return step;
    const { asks, picture } = step.value;
    if (asks.length > 0) for (const ask of asks) kept.set(askKey(ask), arraySample(ask));
    else if (picture) return ok(picture);
    else return failed({ code: "no-picture", where: "", message: "The trial ended without an answer." });
  }
}
