import { expect, test } from "vitest";
import { type TrialAsk, trialOf } from "../../../engine/index.ts";
import { trialRole } from "../../../src/worker/trial/trialRole.ts";
import { warmUp } from "../../../src/worker/trial/warmUp.ts";
import { walk } from "./trialPlan.ts";

const stepsOf = async (steps: AsyncGenerator<void>) => {
  let count = 0;
  while (!(await steps.next()).done) count++;
  return count;
};

test("one that solves makes the first solves of each request, a step each, with its tables made ready", async () => {
  const asked: TrialAsk[] = [];
  const ready = (asks: readonly TrialAsk[]) => {
    asked.push(...asks);
    return undefined;
  };
  const trial = trialOf(walk);
  const step = trial.ok ? trial.value(() => undefined) : trial;
  const first = step.ok ? step.value.asks.length : 0;
  expect(first).toBeGreaterThan(2);
  expect(await stepsOf(warmUp({ warm: [walk, walk], as: "solves" }, ready))).toBe(first + 2);
  expect(asked).toHaveLength(first + 2);
});

test("one that leads goes through a trial to its end", async () => {
  expect(await stepsOf(warmUp({ warm: [walk], as: "leads" }))).toBeGreaterThan(8);
});

test("a request that cannot be met is left for the run to tell of", async () => {
  const refused = { ...walk, plan: { ...walk.plan, elements: [] } };
  expect(await stepsOf(warmUp({ warm: [refused], as: "leads" }))).toBe(0);
  expect(await stepsOf(warmUp({ warm: [refused], as: "solves" }))).toBe(0);
});

test("a worker that is asked for something warms no more", async () => {
  const asked: TrialAsk[] = [];
  const role = trialRole(
    () => {},
    (asks) => {
      asked.push(...asks);
      return undefined;
    },
  );
  const { port1, port2 } = new MessageChannel();
  role({ solveFor: port1 });
  role({ warm: [walk], as: "solves" });
  const replied = new Promise((done) => {
    port2.onmessage = done;
  });
  const ask = asked[0]!;
  port2.postMessage({ batch: 1, asks: [ask] });
  await replied;
  const before = asked.length;
  await new Promise((done) => setTimeout(done, 100));
  expect(asked.length).toBe(before);
  port1.close();
  port2.close();
});
