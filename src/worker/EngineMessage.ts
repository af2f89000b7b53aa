import type {
  ArraySample,
  BandReadout,
  BandRequest,
  BandSample,
  EndVoltages,
  ExpectedRequest,
  ExpectedSheet,
  FedImpedances,
  Plan,
  PlanReadout,
  ReadoutRequest,
  Refit,
  RefitRequest,
  Result,
  TrialAsk,
} from "../../engine/index.ts";

/** A question to the engine: plain data, so that it can cross into a worker. */
export type EngineAsk =
  | { readonly kind: "readouts"; readonly plans: readonly Plan[]; readonly request: ReadoutRequest }
  | { readonly kind: "band"; readonly plan: Plan; readonly request: BandRequest }
  /** A plan as it would be if its few radials lay otherwise (see `layings`). */
  | { readonly kind: "layings"; readonly plan: Plan; readonly request: ReadoutRequest }
  /** One frequency of a sweep whose solves are dear: between two of them it can be broken off. */
  | {
      readonly kind: "sample";
      readonly plan: Plan;
      readonly frequency_MHz: number;
      readonly elevation_deg: number | undefined;
    }
  /** The impedance matrix of a plan's fed elements at one frequency: what a harness has to work into. */
  | { readonly kind: "fed"; readonly plan: Plan; readonly frequency_MHz: number }
  /** The voltages at the ends of a plan's wires. */
  | { readonly kind: "ends"; readonly plan: Plan }
  /** What a meter should show at every step of building. */
  | { readonly kind: "expected"; readonly request: ExpectedRequest }
  /** A plan mended by readings. */
  | { readonly kind: "refit"; readonly request: RefitRequest }
  /** Fields and impedances of all bases at one frequency, free of what is connected. */
  | { readonly kind: "array"; readonly request: TrialAsk };

/** The answers, in the order of the plans asked about. */
export type EngineAnswer =
  | { readonly kind: "readouts"; readonly results: readonly Result<PlanReadout>[] }
  | { readonly kind: "band"; readonly result: Result<BandReadout> }
  | { readonly kind: "layings"; readonly rows: readonly { readonly height_m: number; readonly readout: PlanReadout }[] }
  | { readonly kind: "sample"; readonly result: Result<BandSample> }
  | { readonly kind: "fed"; readonly result: Result<FedImpedances> }
  | { readonly kind: "ends"; readonly result: Result<readonly EndVoltages[]> }
  | { readonly kind: "expected"; readonly result: Result<ExpectedSheet> }
  | { readonly kind: "refit"; readonly result: Result<Refit> }
  | { readonly kind: "array"; readonly result: Result<ArraySample> };

export interface EngineRequest {
  readonly id: number;
  readonly ask: EngineAsk;
}

/**
 * `part` is how much of the answer is done, 0..1, and comes before it. `thrown` is an error of ours, not of the plan's: the
 * message is for the person to pass on. `took_ms` is the worker's own time, without the way there and back.
 */
export type EngineReply =
  | { readonly id: number; readonly part: number }
  | { readonly id: number; readonly answer: EngineAnswer; readonly took_ms: number }
  | { readonly id: number; readonly thrown: string };
