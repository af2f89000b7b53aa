import { describe, expect, test } from "vitest";
import { askKey, driveTrial, type TrialRequest, trialOf } from "../../../engine/index.ts";
import { leadTrials } from "../../../src/worker/trial/leadTrials.ts";
import type { TrialReport } from "../../../src/worker/trial/TrialMessage.ts";
import { okValue } from "../../support/okValue.ts";
import { type HeldHand, heldHand } from "./heldHand.ts";
import { quickPlan, walk } from "./trialPlan.ts";

/** Each answer a tenth of a second after the one before. */
function setUp(count = 2) {
  const reports: TrialReport[] = [];
  let now_ms = 0;
  const leader = leadTrials(
    (report) => reports.push(report),
    trialOf,
    () => (now_ms += 20),
  );
  const hands = Array.from({ length: count }, heldHand);
  for (const [i, hand] of hands.entries()) leader.addHand(i, hand);
  return { reports, leader, hands };
}

function answerAll(hands: readonly HeldHand[]): void {
  while (hands.map((hand) => !hand.isClosed && hand.answer()).some(Boolean));
}

const last = (reports: readonly TrialReport[]) => reports.at(-1)!;
const pictureOf = (report: TrialReport) => ("picture" in report ? report.picture : null);
const keysOf = (hands: readonly HeldHand[]) => hands.flatMap((hand) => hand.asked.map(askKey));

/** What one engine, alone and in order, makes of the request. */
const alone = (request: TrialRequest) => okValue(driveTrial(okValue(trialOf(request))));

describe("a trial led over several hands", { timeout: 60_000 }, () => {
  test("is shared among them, no solve is asked for twice, and comes out as from one alone", () => {
    const { reports, leader, hands } = setUp();
    leader.run(7, walk);
    expect(hands.map((hand) => hand.waiting)).toEqual([1, 1]);
    answerAll(hands);
    expect(last(reports)).toMatchObject({ run: 7, kind: "done", busy: 0 });
    expect(pictureOf(last(reports))).toEqual(alone(walk));
    for (const hand of hands) expect(hand.asked.length).toBeGreaterThan(1);
    expect(new Set(keysOf(hands)).size).toBe(keysOf(hands).length);
  });

  test("tells how far it is: never more done than asked for, time left only once there is a pace, pictures on the way", () => {
    const { reports, leader, hands } = setUp();
    leader.run(1, walk);
    answerAll(hands);
    const going = reports.flatMap((report) => (report.kind === "going" ? [report] : []));
    expect(going[0]!.progress).toMatchObject({ done: 0, left_ms: null });
    for (const { progress } of going) expect(progress.done).toBeLessThanOrEqual(progress.total);
    expect(going.some(({ progress }) => progress.left_ms !== null && progress.left_ms > 0)).toBe(true);
    expect(going.some(({ picture }) => picture !== undefined)).toBe(true);
  });

  test("stopped: nothing more goes out, hands come to rest, and what they were at is kept for when it goes on", () => {
    const { reports, leader, hands } = setUp();
    leader.run(1, walk);
    hands[0]!.answer();
    const before = keysOf(hands).length;
    leader.stop();
    expect(last(reports)).toEqual({ run: 1, kind: "stopped", busy: 2 });
    answerAll(hands);
    expect(last(reports)).toEqual({ run: 1, kind: "stopped", busy: 0 });
    expect(keysOf(hands)).toHaveLength(before);

    leader.run(2, walk);
    answerAll(hands);
    expect(last(reports)).toMatchObject({ run: 2, kind: "done" });
    expect(pictureOf(last(reports))).toEqual(alone(walk));
    expect(new Set(keysOf(hands)).size).toBe(keysOf(hands).length);
  });

  test("what a lost hand was at is asked of another; a hand that comes late gets its share", () => {
    const { reports, leader, hands } = setUp();
    leader.run(1, walk);
    leader.loseHand(0);
    expect(hands[0]!.isClosed).toBe(true);
    const late = heldHand();
    leader.addHand(9, late);
    answerAll([hands[1]!, late]);
    expect(last(reports)).toMatchObject({ kind: "done", busy: 0 });
    expect(pictureOf(last(reports))).toEqual(alone(walk));
    expect(late.asked.length).toBeGreaterThan(0);
    const others = new Set(keysOf([hands[1]!, late]));
    for (const key of keysOf([hands[0]!])) expect(others.has(key)).toBe(true);
  });

  test("when the only hand is lost, what it was at waits for the next one", () => {
    const { reports, leader, hands } = setUp(1);
    leader.run(1, walk);
    // Its pace is known by then, and it has been given all there was.
    hands[0]!.answer();
    const lost = hands[0]!.batches.slice(1).flat().map(askKey);
    expect(lost.length).toBeGreaterThan(1);
    leader.loseHand(0);
    const late = heldHand();
    leader.addHand(1, late);
    answerAll([late]);
    expect(keysOf([late])).toEqual(expect.arrayContaining(lost));
    expect(pictureOf(last(reports))).toEqual(alone(walk));
  });

  test("a newer trial takes the place of the one that runs, and shares what is known", () => {
    const { reports, leader, hands } = setUp();
    leader.run(1, walk);
    leader.run(2, { ...walk, spacing_wl: { from: 0.08, to: 0.3, points: 11 } });
    answerAll(hands);
    expect(reports.filter(({ run, kind }) => run === 1 && kind === "done")).toEqual([]);
    expect(last(reports)).toMatchObject({ run: 2, kind: "done" });
    // The same nodes serve both: the number of points drawn is not solved for.
    expect(new Set(keysOf(hands)).size).toBe(keysOf(hands).length);
  });

  test("a hand that breaks ends the trial in words; the same request then goes on", () => {
    const { reports, leader, hands } = setUp();
    leader.run(1, walk);
    hands[0]!.fail("out of memory");
    expect(last(reports)).toMatchObject({ run: 1, kind: "thrown", message: "out of memory" });
    leader.run(2, walk);
    answerAll(hands);
    expect(pictureOf(last(reports))).toEqual(alone(walk));
  });

  test("a request that cannot be done fails with its problems, and asks nothing", () => {
    const { reports, leader, hands } = setUp();
    leader.run(1, { ...walk, spacing_wl: { from: 0.3, to: 0.08, points: 1 } });
    expect(last(reports)).toMatchObject({ run: 1, kind: "failed" });
    const failure = last(reports);
    expect(failure.kind === "failed" && failure.problems.length).toBeGreaterThan(0);
    expect(keysOf(hands)).toEqual([]);
  });
});

test("a batch takes one soil's tables at one frequency, however many wait", { timeout: 60_000 }, () => {
  const { reports, leader, hands } = setUp();
  const soil = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
  const elements = quickPlan.elements.map((one) => ({ ...one, radials: { ...one.radials, count: 2 } }));
  const plan = { ...quickPlan, elements, ground: soil, soilModel: "full-wave" as const };
  leader.run(1, { kind: "band", plan, look: walk.look, frequency_MHz: { from: 10, to: 10.3, points: 5 } });
  answerAll(hands);
  expect(last(reports).kind).toBe("done");
  const batches = hands.flatMap((hand) => hand.batches);
  expect(batches.length).toBeGreaterThan(3);
  for (const batch of batches) expect(new Set(batch.map((ask) => ask.frequency_MHz)).size).toBe(1);
});
