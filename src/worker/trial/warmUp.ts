import { arraySample, askKey, type TrialAsk, type TrialRequest, trialOf } from "../../../engine/index.ts";
import type { WarmMessage } from "./TrialMessage.ts";

/** Solves of each request by which a worker that solves comes up to its speed. */
const SOLVES = [16, 2] as const;

/**
 * What a worker does before it is asked for anything, so that the first trial meets code that is compiled and tables that
 * are built: one that solves makes the first few solves of each request; one that leads goes through the first request, picture
 * and all. Nothing of it is kept. It goes a step at a time, so that it can be dropped between two.
 *
 * @param message requests of the quick model first
 * @param ready as in `solveFor`
 */
export async function* warmUp(
  { warm: requests, as }: WarmMessage,
  ready?: (asks: readonly TrialAsk[]) => Promise<void> | undefined,
): AsyncGenerator<void> {
  if (as === "solves") {
    for (const [i, request] of requests.entries())
      for (const ask of firstAsks(request).slice(0, SOLVES[i] ?? 0)) {
        await ready?.([ask]);
        arraySample(ask);
        yield;
      }
    return;
  }
  const trial = requests[0] && trialOf(requests[0]);
  if (!trial?.ok) return;
  const known = new Map<string, ReturnType<typeof arraySample>>();
  for (;;) {
    const step = trial.value((ask) => known.get(askKey(ask)));
    if (!step.ok) return;
    yield;
    if (step.value.asks.length === 0) return void step.value.picture;
    for (const ask of step.value.asks) {
      known.set(askKey(ask), arraySample(ask));
      yield;
    }
  }
}

function firstAsks(request: TrialRequest): readonly TrialAsk[] {
  const trial = trialOf(request);
  const step = trial.ok ? trial.value(() => undefined) : trial;
  return step.ok ? step.value.asks : [];
}
