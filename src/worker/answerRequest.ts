import {
  arraySample,
  bandSample,
  endVoltages,
  expectedReadings,
  fedImpedances,
  layings,
  readPlan,
  refitReadings,
  sweepBandSmooth,
} from "../../engine/index.ts";
import { driveInPlace } from "./driveInPlace.ts";
import type { EngineAnswer, EngineAsk, EngineReply, EngineRequest } from "./EngineMessage.ts";

/** What the worker does with a message, telling now and then which part of it is done; apart from the worker, so that the same code can run beside a test. */
export function answerRequest({ id, ask }: EngineRequest, onPart?: (part: number) => void): EngineReply {
  try {
    const from_ms = performance.now();
    const answered = answer(ask, onPart);
    return { id, answer: answered, took_ms: performance.now() - from_ms };
  } catch (error) {
    return { id, thrown: error instanceof Error ? error.message : String(error) };
  }
}

function answer(ask: EngineAsk, onPart?: (part: number) => void): EngineAnswer {
  switch (ask.kind) {
    case "readouts":
      return {
        kind: "readouts",
        results: ask.plans.map((plan, i) => {
          const own = onPart && ((part: number) => onPart((i + part) / ask.plans.length));
          return readPlan(plan, ask.request, own);
        }),
      };
    case "band":
      return { kind: "band", result: sweepBandSmooth(ask.plan, ask.request) };
    case "layings":
      // One that cannot be laid so (radials that would cross something) is left out.
      return {
        kind: "layings",
        rows: layings(ask.plan).flatMap(({ height_m, plan }) => {
          const read = readPlan(plan, ask.request);
          return read.ok ? [{ height_m, readout: read.value }] : [];
        }),
      };
    case "sample":
      return { kind: "sample", result: bandSample(ask.plan, ask.frequency_MHz, ask.elevation_deg) };
    case "fed":
      return { kind: "fed", result: fedImpedances(ask.plan, ask.frequency_MHz) };
    case "ends":
      return { kind: "ends", result: endVoltages(ask.plan) };
    case "expected": {
      const trial = expectedReadings(ask.request);
      return { kind: "expected", result: trial.ok ? driveInPlace(trial.value, onPart) : trial };
    }
    case "array":
      return { kind: "array", result: arraySample(ask.request) };
    case "refit": {
      const trial = refitReadings(ask.request);
      return { kind: "refit", result: trial.ok ? driveInPlace(trial.value, onPart) : trial };
    }
  }
}
