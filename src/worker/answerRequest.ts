import { bandSample, readPlan, sweepBandSmooth } from "../../engine/index.ts";
import type { EngineAnswer, EngineAsk, EngineReply, EngineRequest } from "./EngineMessage.ts";

/** What the worker does with a message; apart from the worker, so that the same code can run beside a test. */
export function answerRequest({ id, ask }: EngineRequest): EngineReply {
  try {
    return { id, answer: answer(ask) };
  } catch (error) {
    return { id, thrown: error instanceof Error ? error.message : String(error) };
  }
}

function answer(ask: EngineAsk): EngineAnswer {
  switch (ask.kind) {
    case "readouts":
      return { kind: "readouts", results: ask.plans.map((plan) => readPlan(plan, ask.request)) };
    case "band":
      return { kind: "band", result: sweepBandSmooth(ask.plan, ask.request) };
    case "sample":
      return { kind: "sample", result: bandSample(ask.plan, ask.frequency_MHz, ask.elevation_deg) };
  }
}
