import {
  assessHarness,
  type Complex,
  type HarnessPoint,
  type Line,
  type PairPoint,
  type Plan,
  type PlanFeedline,
  type PlanReadout,
  type Problem,
  type ReadoutRequest,
  type Result,
  swr,
} from "../../../../engine/index.ts";
import type { BandSpan } from "../../../store/bandSpan.ts";
import type { EngineAnswer, EngineAsk } from "../../../worker/EngineMessage.ts";
import { matrixFrequencies, matrixOver } from "./bandMatrix.ts";
import { harnesses, type NamedHarness } from "./harnesses.ts";
import { type PairPlans, polar, withCurrents } from "./pairPlans.ts";

export interface PairAsk {
  /** In the model that is to answer. */
  readonly plans: PairPlans;
  readonly ratio: { readonly magnitude: number; readonly phase_deg: number };
  readonly feedline: PlanFeedline;
  /** To the rig, and what the harness is cut from. */
  readonly line: Line;
  readonly cable: Line;
  readonly span: BandSpan;
  readonly request: ReadoutRequest;
}

/** One way to use a second vertical. */
export interface PairRow {
  readonly id: "single" | "parasitic" | "ideal" | NamedHarness["id"];
  readonly name: string;
  /** Scaled by nothing: gain for power into the antenna. Null for a harness that cannot be made. */
  readonly readout: PlanReadout | null;
  /** Current behind over that ahead, where both are fed. */
  readonly ratio?: Complex;
  /** What the rig's line sees; absent where there are two feedpoints and no harness. */
  readonly input_ohm?: Complex;
  readonly harness?: { readonly named: NamedHarness; readonly design: HarnessPoint; readonly loss_dB: number };
  /** SWR on the rig's line over the band. */
  readonly curve?: {
    readonly frequency_MHz: readonly number[];
    readonly swr: readonly number[];
    readonly worst: number;
  };
  /** At the path's elevation, the harness's loss taken off. */
  readonly gain_dBi: number;
  readonly problem?: Problem;
}

export interface PairState {
  /** Every question that is known to be needed so far, in the order of need. */
  readonly asks: readonly EngineAsk[];
  /** The comparison, once all of it is answered. */
  readonly result: readonly PairRow[] | null;
  readonly problems: readonly Problem[];
}

/** Close enough for a smooth curve; the matrix itself turns slowly. */
const pieces = 48;

/**
 * The comparison of a fed pair with the reflector and the single vertical: what has to be asked of the engine, and,
 * once it has answered, every row. Pure: the answers come by `answerTo`.
 *
 * A harness's pattern is that of the currents it really makes, lossy lines and all; its gain has its loss taken off.
 */
export function pairState(ask: PairAsk, answerTo: (ask: EngineAsk) => EngineAnswer | undefined): PairState {
  const { plans, feedline, line, cable, span, request } = ask;
  const design_MHz = plans.fed.frequency_MHz;
  const asks: EngineAsk[] = [];
  const problems: Problem[] = [];
  const put = (question: EngineAsk) => {
    asks.push(question);
    return answerTo(question);
  };
  const matrixAt = (plan: Plan, frequency_MHz: number): PairPoint | null => {
    const answer = put({ kind: "fed", plan, frequency_MHz });
    if (answer?.kind !== "fed") return null;
    if (answer.result.ok) return { frequency_MHz, impedance_ohm: answer.result.value.impedance_ohm };
    problems.push(...answer.result.problems);
    return null;
  };
  const readoutOf = (plan: Plan): PlanReadout | null => {
    const answer = put({ kind: "readouts", plans: [plan], request });
    const result = answer?.kind === "readouts" ? answer.results[0] : undefined;
    if (result && !result.ok) problems.push(...result.problems);
    return result?.ok ? result.value : null;
  };

  const wanted = polar(ask.ratio.magnitude, ask.ratio.phase_deg);
  const atDesign = matrixAt(plans.fed, design_MHz);
  const single = readoutOf(plans.single);
  const parasitic = readoutOf(plans.parasitic);
  const ideal = readoutOf(withCurrents(plans.fed, wanted));
  if (!atDesign) return { asks, result: null, problems: unique(problems) };
  const made = harnesses({
    impedance_ohm: atDesign.impedance_ohm,
    frequency_MHz: design_MHz,
    ratio: wanted,
    cable,
    spacing_m: plans.spacing_m,
    coilQ: feedline.coilQ,
    capacitorQ: feedline.capacitorQ,
  }).map((named) => {
    const solved = solvedAt(named, [atDesign], line, feedline.power_W);
    const readout = solved.ok ? readoutOf(withCurrents(plans.fed, solved.value[0]!.ratio)) : null;
    return { named, solved, readout };
  });

  const frequencies = matrixFrequencies(span.from_MHz, span.to_MHz, design_MHz);
  const over = (plan: Plan) => frequencies.map((f) => matrixAt(plan, f));
  const fedBand = over(plans.fed);
  const singleBand = over(plans.single);
  const parasiticBand = over(plans.parasitic);
  const isDone = asks.every((one) => answerTo(one) !== undefined);
  if (problems.length > 0 || !isDone || !single || !parasitic || !ideal)
    return { asks, result: null, problems: unique(problems) };

  const low = frequencies[0]!;
  const high = frequencies.at(-1)!;
  const drawn = Array.from({ length: pieces + 1 }, (_, i) => low + ((high - low) * i) / pieces);
  const band = matrixOver(whole(fedBand), drawn);
  const alone = (
    id: "single" | "parasitic",
    name: string,
    readout: PlanReadout,
    points: readonly PairPoint[],
  ): PairRow => {
    const swrs = matrixOver(points, drawn).map(({ impedance_ohm }) => swrOf(impedance_ohm[0]![0]!, line));
    return {
      id,
      name,
      readout,
      input_ohm: readout.feeds[0]!.impedance_ohm,
      curve: { frequency_MHz: drawn, swr: swrs, worst: Math.max(...swrs) },
      gain_dBi: readout.path.forward_dBi,
    };
  };
  const rows: PairRow[] = [
    alone("single", "one vertical", single, whole(singleBand)),
    alone("parasitic", "with the reflector, as planned", parasitic, whole(parasiticBand)),
    {
      id: "ideal",
      name: "both fed, currents as wanted",
      readout: ideal,
      ratio: wanted,
      gain_dBi: ideal.path.forward_dBi,
    },
    ...made.map(({ named, solved, readout }): PairRow => {
      const all = solvedAt(named, band, line, feedline.power_W);
      if (!solved.ok || !all.ok || !readout) {
        const problem = [solved, all].flatMap((one) => (one.ok ? [] : one.problems))[0];
        return { id: named.id, name: named.name, readout: null, gain_dBi: Number.NaN, ...(problem && { problem }) };
      }
      const [design] = solved.value;
      const { loss_dB, inputImpedance_ohm } = design!.solution;
      const swrs = all.value.map((point) => point.swr);
      return {
        id: named.id,
        name: named.name,
        readout,
        ratio: design!.ratio,
        input_ohm: inputImpedance_ohm,
        harness: { named, design: design!, loss_dB },
        curve: { frequency_MHz: drawn, swr: swrs, worst: Math.max(...swrs) },
        gain_dBi: readout.path.forward_dBi - loss_dB,
      };
    }),
  ];
  return { asks, result: rows, problems: [] };
}

const solvedAt = (
  { design }: NamedHarness,
  points: readonly PairPoint[],
  line: Line,
  power_W: number,
): Result<readonly HarnessPoint[]> =>
  design.ok ? assessHarness(design.value, points, line.impedance_ohm, power_W) : design;

const whole = (points: readonly (PairPoint | null)[]) => points.filter((one) => one !== null);

const swrOf = (z: Complex, line: Line) => swr(z.re, z.im, line.impedance_ohm);

const unique = (problems: readonly Problem[]) => [...new Map(problems.map((p) => [p.message, p])).values()];
