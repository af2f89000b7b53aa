import { describe, expect, test } from "vitest";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import type { EngineAsk } from "../../../src/worker/EngineMessage.ts";
import { engineClient } from "../../../src/worker/engineClient.ts";
import { heldWorkers } from "./heldWorker.ts";

const ask = (title: string): EngineAsk => ({
  kind: "readouts",
  plans: [{ ...demoPlan, title, ground: { kind: "perfect" } }],
  request: readoutRequest(demoPlan),
});

function setUp() {
  const held = heldWorkers();
  const faults: string[] = [];
  const answered: string[] = [];
  const client = engineClient(held.make, (message) => faults.push(message));
  return {
    held,
    faults,
    answered,
    client,
    send: (title: string) => client.ask(ask(title), () => answered.push(title)),
  };
}

describe("newest wins", () => {
  test("one question is with the worker, and of those that wait only the newest is ever sent", () => {
    const { held, answered, send } = setUp();
    for (const title of ["first", "second", "third", "fourth"]) send(title);
    const [worker] = held.workers;
    expect(worker!.asked).toHaveLength(1);
    worker!.answer();
    expect(worker!.asked.map(({ ask }) => ask.kind === "readouts" && ask.plans[0]!.title)).toEqual(["fourth"]);
    held.answerAll();
    expect(answered).toEqual(["first", "fourth"]);
  });

  test("a question that is with the worker is not sent again under its name; what waited behind it is dropped", () => {
    const { held, client } = setUp();
    const answered: string[] = [];
    const send = (title: string, done = title) => client.ask(ask(title), () => answered.push(done), undefined, title);
    send("first");
    send("second");
    send("first", "first again");
    const [worker] = held.workers;
    worker!.answer();
    expect(answered).toEqual(["first"]);
    expect(worker!.asked).toHaveLength(0);
    // Answered, it can be asked anew.
    send("first", "first anew");
    held.answerAll();
    expect(answered).toEqual(["first", "first anew"]);
  });

  test("a reply nobody waits for is dropped", () => {
    const { held, answered, send, client } = setUp();
    send("first");
    held.workers[0]!.say({ id: 999, answer: { kind: "readouts", results: [] }, took_ms: 1 });
    expect(answered).toEqual([]);
    expect(client.isBusy).toBe(true);
  });

  test("the part that is done is told to the question in flight only, and never ends it", () => {
    const { held, client } = setUp();
    const told: number[] = [];
    const answers: string[] = [];
    client.ask(
      ask("long"),
      () => answers.push("long"),
      (part) => told.push(part),
    );
    const [worker] = held.workers;
    worker!.say({ id: worker!.asked[0]!.id, part: 0.25 });
    worker!.say({ id: 999, part: 0.5 });
    expect(told).toEqual([0.25]);
    expect(client.isBusy).toBe(true);
    worker!.answer();
    expect(answers).toEqual(["long"]);
  });

  test("broken off, a question is never answered, its worker is gone, and what waits goes to another", () => {
    const { held, answered, send, client } = setUp();
    send("first");
    send("second");
    client.abort();
    expect(held.workers.map((worker) => worker.isGone)).toEqual([true, false]);
    held.answerAll();
    expect(answered).toEqual(["second"]);
    client.abort();
    expect(client.isBusy).toBe(false);
  });

  test("what was forgotten is not sent", () => {
    const { held, answered, send, client } = setUp();
    send("first");
    send("second");
    client.forget();
    held.answerAll();
    expect(answered).toEqual(["first"]);
  });
});

describe("faults", () => {
  test("a worker that fires a bare error is given up, told of in words, and replaced at the next question", () => {
    const { held, faults, answered, send } = setUp();
    send("first");
    held.workers[0]!.onerror?.({});
    expect(faults).toEqual(["this browser did not start the background worker"]);
    expect(held.workers[0]!.isGone).toBe(true);
    send("again");
    held.answerAll();
    expect(held.workers).toHaveLength(2);
    expect(answered).toEqual(["again"]);
  });

  test("an error thrown in the engine is passed on in its own words", () => {
    const { held, faults, answered, send } = setUp();
    send("first");
    held.workers[0]!.say({ id: held.workers[0]!.asked[0]!.id, thrown: "fillImpedance: 3 rows" });
    expect(faults).toEqual(["fillImpedance: 3 rows"]);
    expect(answered).toEqual([]);
  });

  test("a constructor that throws is a fault like any other", () => {
    const faults: string[] = [];
    const client = engineClient(
      () => {
        throw new Error("no workers here");
      },
      (message) => faults.push(message),
    );
    client.ask(ask("first"), () => expect.unreachable());
    expect(faults).toEqual(["no workers here"]);
  });

  test("a late error of a worker that was already replaced does not stop its successor", () => {
    const { held, faults, answered, send } = setUp();
    send("first");
    held.workers[0]!.onerror?.({ message: "gone" });
    send("again");
    held.workers[0]!.onerror?.({ message: "gone twice" });
    held.answerAll();
    expect(faults).toEqual(["gone"]);
    expect(answered).toEqual(["again"]);
  });
});
