import { afterEach, describe, expect, test, vi } from "vitest";
import { besideTrialWorker } from "../../../src/worker/trial/besideTrialWorker.ts";
import type { LeadMessage, SolveMessage, TrialReport, WarmMessage } from "../../../src/worker/trial/TrialMessage.ts";
import type { TrialWorker } from "../../../src/worker/trial/TrialWorker.ts";
import { handsFor, leaderPatience_ms, patience_ms, trialPool } from "../../../src/worker/trial/trialPool.ts";
import { walk } from "./trialPlan.ts";

interface Watched extends TrialWorker {
  readonly sent: (LeadMessage | SolveMessage | WarmMessage)[];
  readonly isGone: boolean;
}

/** Workers that run beside the test, or (`deaf`) hear nothing at all, as one in a long solve does. */
function workers(isDeaf: (index: number) => boolean = () => false) {
  const list: Watched[] = [];
  const make = (): TrialWorker => {
    const real = besideTrialWorker();
    const deaf = isDeaf(list.length);
    const sent: (LeadMessage | SolveMessage | WarmMessage)[] = [];
    let isGone = false;
    const worker: Watched = {
      sent,
      get isGone() {
        return isGone;
      },
      onmessage: null,
      onerror: null,
      postMessage(message, transfer) {
        sent.push(message);
        if (!deaf) real.postMessage(message, transfer);
      },
      terminate() {
        isGone = true;
        real.terminate();
      },
    };
    real.onmessage = (event) => worker.onmessage?.(event);
    list.push(worker);
    return worker;
  };
  return { list, make };
}

function setUp(isDeaf?: (index: number) => boolean) {
  const { list, make } = workers(isDeaf);
  const reports: TrialReport[] = [];
  const faults: string[] = [];
  const pool = trialPool(
    make,
    2,
    (report) => reports.push(report),
    (message) => faults.push(message),
  );
  pools.push(pool);
  return { list, reports, faults, pool };
}
const pools: { end(): void }[] = [];
afterEach(() => {
  for (const pool of pools.splice(0)) pool.end();
});
const ended = (list: readonly Watched[]) => list.filter((worker) => worker.isGone).length;
const wait = { timeout: 20_000, interval: 10 };

test("two hands at least, four at most, whatever the machine says", () => {
  expect([undefined, 1, 2, 3, 4, 8, 64].map(handsFor)).toEqual([2, 2, 2, 3, 4, 4, 4]);
});

describe("the workers of a trial", { timeout: 40_000 }, () => {
  test("nothing is started before it is needed; then one leads, two solve for it, and a picture comes", async () => {
    const { list, reports, pool } = setUp();
    expect(pool.alive).toBe(0);
    pool.run(1, walk);
    expect(pool.alive).toBe(3);
    await vi.waitFor(() => expect(reports.at(-1)?.kind).toBe("done"), wait);
    expect(list.filter((worker) => worker.sent.some((message) => "solveFor" in message))).toHaveLength(2);
    expect(reports.at(-1)).toMatchObject({ run: 1, busy: 0, picture: { kind: "pace" } });
    // All three are at rest and stay for the next trial.
    expect(ended(list)).toBe(0);
  });

  test("warmed, all three are there before the first run and come up to speed, which nobody is told of", async () => {
    const { list, reports, pool } = setUp();
    pool.warm([walk]);
    expect(pool.alive).toBe(3);
    const parts = list.flatMap(({ sent }) => sent.flatMap((message) => ("warm" in message ? [message.as] : [])));
    expect(parts.toSorted()).toEqual(["leads", "solves", "solves"]);
    await new Promise((done) => setTimeout(done, 50));
    expect(reports).toEqual([]);
    pool.warm([walk]);
    pool.run(1, walk);
    expect(list).toHaveLength(3);
    await vi.waitFor(() => expect(reports.at(-1)).toMatchObject({ run: 1, kind: "done", busy: 0 }), wait);
  });

  test("after a stop those at rest stay, and the next run starts no others", async () => {
    const { list, reports, pool } = setUp();
    pool.run(1, walk);
    await vi.waitFor(() => expect(reports.length).toBeGreaterThan(0), wait);
    pool.stop();
    await vi.waitFor(() => expect(reports.at(-1)).toMatchObject({ kind: "stopped", busy: 0 }), wait);
    await new Promise((done) => setTimeout(done, patience_ms + 100));
    expect(ended(list)).toBe(0);
    pool.run(2, walk);
    await vi.waitFor(() => expect(reports.at(-1)).toMatchObject({ run: 2, kind: "done" }), wait);
    expect(list).toHaveLength(3);
  });

  test("after a stop a worker that is still solving is ended; the next run starts others", async () => {
    const { list, reports, pool } = setUp((index) => index === 1 || index === 2);
    pool.run(1, walk);
    await vi.waitFor(() => expect(reports.at(-1)).toMatchObject({ busy: 2 }), wait);
    pool.stop();
    await vi.waitFor(() => expect(ended(list)).toBe(2), { timeout: patience_ms + 2000, interval: 10 });
    await vi.waitFor(() => expect(reports.at(-1)).toMatchObject({ kind: "stopped", busy: 0 }), wait);
    expect(pool.alive).toBe(1);
    pool.run(2, walk);
    await vi.waitFor(() => expect(reports.at(-1)).toMatchObject({ run: 2, kind: "done" }), wait);
    expect(list).toHaveLength(5);
  });

  test("a leader that says nothing after a stop is ended with all the others", async () => {
    const { list, reports, pool } = setUp((index) => index === 0);
    pool.run(1, walk);
    pool.stop();
    await vi.waitFor(() => expect(ended(list)).toBe(3), { timeout: leaderPatience_ms + 2000, interval: 20 });
    expect(pool.alive).toBe(0);
    expect(reports.at(-1)).toMatchObject({ kind: "stopped", busy: 0 });
  });

  test("a worker that breaks ends all, in words; the next run starts afresh", async () => {
    const { list, reports, faults, pool } = setUp();
    pool.run(1, walk);
    list[1]!.onerror?.({ message: "out of memory" });
    expect(faults).toEqual(["out of memory"]);
    expect(ended(list)).toBe(3);
    pool.run(2, walk);
    await vi.waitFor(() => expect(reports.at(-1)).toMatchObject({ run: 2, kind: "done" }), wait);
  });

  test("a browser that starts no worker is told of", () => {
    const faults: string[] = [];
    const pool = trialPool(
      () => {
        throw new DOMException("no workers here");
      },
      2,
      () => {},
      (message) => faults.push(message),
    );
    pool.run(1, walk);
    expect(faults).toEqual(["no workers here"]);
    expect(pool.alive).toBe(0);
  });
});
