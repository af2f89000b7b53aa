import {
  type Complex,
  type Line,
  type PartReadout,
  type Plan,
  type PlanFeedline,
  type PlanReadout,
  type PlanReversal,
  type Problem,
  type ReadoutRequest,
  type RelayState,
  type ReversalLoad,
  relayStates,
  reversalLoads,
  solveNetwork,
} from "../../../../engine/index.ts";
import type { BandSpan } from "../../../store/bandSpan.ts";
import type { EngineAnswer, EngineAsk } from "../../../worker/EngineMessage.ts";
import type { PairPlans } from "../pair/pairPlans.ts";
import { searchLoad, type Tried } from "./loadSearch.ts";
import { relayNetwork } from "./relayNetwork.ts";

export interface ReversalAsk {
  /** Both alike, in the model that is to answer. */
  readonly plans: PairPlans;
  readonly choice: PlanReversal;
  readonly feedline: PlanFeedline;
  /** A stub is cut from this. */
  readonly cable: Line;
  readonly span: BandSpan;
  readonly request: ReadoutRequest;
}

export interface SolvedState {
  readonly state: RelayState;
  readonly readout: PlanReadout;
  /** What the line sees, and every contact with what it carries or stands off, at the power. */
  readonly input_ohm: Complex;
  readonly contacts: readonly PartReadout[];
  readonly load: readonly PartReadout[];
}

export interface Reversal {
  readonly best: Tried;
  readonly tried: readonly Tried[];
  /** What the present reflector carries, over the driven. */
  readonly present: Complex;
  readonly loads: readonly ReversalLoad[];
  readonly load: ReversalLoad;
  readonly states: readonly SolvedState[];
}

export interface ReversalProgress {
  readonly asks: readonly EngineAsk[];
  readonly result: Reversal | null;
  readonly problems: readonly Problem[];
}

/**
 * A pair of like elements turned round by relays: the load is searched for with the engine, then each relay state is
 * solved as a plan of its own (pattern, impedance) and as a network (contacts). Pure: answers come by `answerTo`.
 */
export function reversalState(
  ask: ReversalAsk,
  answerTo: (ask: EngineAsk) => EngineAnswer | undefined,
): ReversalProgress {
  const { plans, choice, feedline, cable, span, request } = ask;
  const { fed } = plans;
  const design_MHz = fed.frequency_MHz;
  const asks: EngineAsk[] = [];
  const problems = new Map<string, Problem>();
  const note = (found: readonly Problem[]) => {
    for (const one of found) problems.set(one.message, one);
  };
  const none = (): ReversalProgress => ({ asks, result: null, problems: [...problems.values()] });
  const readoutOf = (plan: Plan): PlanReadout | null => {
    const question: EngineAsk = { kind: "readouts", plans: [plan], request };
    asks.push(question);
    const answer = answerTo(question);
    const result = answer?.kind === "readouts" ? answer.results[0] : undefined;
    if (result && !result.ok) note(result.problems);
    return result?.ok ? result.value : null;
  };

  const now = readoutOf(plans.parasitic);
  const present = now?.baseCurrents[1]?.current ?? null;
  if (choice.goal === "as-now" && !present) return none();
  const { tried, best } = searchLoad(choice.goal, present, (reactance_ohm) =>
    readoutOf(withBases(fed, [{ kind: "fed" }, { kind: "loaded", resistance_ohm: 0, reactance_ohm }])),
  );
  if (!best || !present) return none();
  const loads = reversalLoads({
    reactance_ohm: best.reactance_ohm,
    design_MHz,
    band_MHz: [span.from_MHz, span.to_MHz],
    coilQ: feedline.coilQ,
    capacitorQ: feedline.capacitorQ,
    stub: cable,
  });
  if (!loads.ok) {
    note(loads.problems);
    return none();
  }
  const load = loads.value[choice.load === "stub" ? 1 : 0]!;
  const [front, back] = fed.elements;
  const question: EngineAsk = { kind: "fed", plan: fed, frequency_MHz: design_MHz };
  asks.push(question);
  const matrix = answerTo(question);
  if (matrix?.kind === "fed" && !matrix.result.ok) note(matrix.result.problems);

  const states = relayStates(front!.id, back!.id, load.design_ohm)
    .filter(({ id }) => id !== "grounded")
    .map((state): SolvedState | null => {
      const readout = readoutOf(
        withBases(
          fed,
          state.elements.map((one) => one.base),
        ),
      );
      if (!readout || matrix?.kind !== "fed" || !matrix.result.ok) return null;
      const network = relayNetwork(state, load, feedline.coilQ, feedline.capacitorQ, cable);
      const solved = solveNetwork(network, matrix.result.value.impedance_ohm, design_MHz, feedline.power_W);
      if (!solved.ok) {
        note(solved.problems);
        return null;
      }
      const { parts, inputImpedance_ohm } = solved.value;
      return {
        state,
        readout,
        input_ohm: inputImpedance_ohm,
        contacts: parts.filter((part) => part.kind === "contact"),
        load: parts.filter((part) => part.kind !== "contact"),
      };
    });
  const solved = states.filter((one) => one !== null);
  if (solved.length < states.length) return none();
  return {
    asks,
    result: { best, tried, present, loads: loads.value, load, states: solved },
    problems: [...problems.values()],
  };
}

/** The plan with its elements' bases set, in order. */
export function withBases(plan: Plan, bases: readonly Plan["elements"][number]["base"][]): Plan {
  return { ...plan, elements: plan.elements.map((element, i) => ({ ...element, base: bases[i]! })) };
}
