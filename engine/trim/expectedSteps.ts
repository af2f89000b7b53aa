import type { Plan } from "../contract.ts";
import { cx } from "../network/cx.ts";
import type { BenchAllowance, BenchLengths, BenchState } from "../plan/PlanBench.ts";
import { wavelength_m } from "../units.ts";
import { adviceFor } from "./adviceFor.ts";
import type { BenchRoles } from "./benchRoles.ts";
import type { ConnectedBase, Expected, ExpectedFigures, ExpectedStep, ExpectedStepKind } from "./ExpectedSheet.ts";
import { expectedFigures, spread } from "./expectedFigures.ts";
import type { MatrixCurve } from "./matrixCurve.ts";
import { meterAt, meterReading } from "./meterReading.ts";

/** Cut half of what seems needed, then measure: common practice, no source. */
const FIRST_PART = 0.5;
/** Heights closer than this count as equal: the pair can be reversed. */
const EQUAL_PART = 0.01;

export interface StepsInput {
  readonly plan: Plan;
  readonly roles: BenchRoles;
  readonly allowance: BenchAllowance;
  readonly from_MHz: number;
  readonly to_MHz: number;
  readonly planned: MatrixCurve;
  readonly reflectorLong: MatrixCurve;
  readonly bothLong: MatrixCurve;
  readonly otherSoils: readonly MatrixCurve[];
}

/** The measuring procedure of a plan, step by step, with its figures. */
export function expectedSteps(input: StepsInput): ExpectedStep[] {
  const { plan, roles, allowance, planned, reflectorLong, bothLong } = input;
  const driven = plan.elements[roles.driven]!;
  const reflector = roles.reflector === undefined ? undefined : plan.elements[roles.reflector]!;
  const longer = (height_m: number, percent: number) => height_m * (1 + percent / 100);
  const lengths: BenchLengths = {
    driven_m: driven.height_m,
    ...(reflector && { reflector_m: reflector.height_m }),
  };
  const withReflectorLong: BenchLengths = {
    driven_m: driven.height_m,
    ...(reflector && { reflector_m: longer(reflector.height_m, allowance.reflector_percent) }),
  };
  const withBothLong = { ...withReflectorLong, driven_m: longer(driven.height_m, allowance.driven_percent) };
  const height_wl = driven.height_m / wavelength_m(plan.frequency_MHz);

  const steps: ExpectedStep[] = [];
  const bases = (state?: BenchState) =>
    plan.elements.map(({ id, base }, i) => ({ elementId: id, base: connected(input, i, base.kind, state) }));
  const put = (kind: ExpectedStepKind, at: BenchLengths, more: Partial<ExpectedStep> = {}) => {
    const bare = { kind, number: steps.length + 1, bases: bases(more.state), lengths_m: at, advice: [], ...more };
    steps.push({ ...bare, advice: adviceFor(bare, plan.frequency_MHz, height_wl) });
  };
  const measured = (state: BenchState, curve: MatrixCurve) => ({ state, ...expectedFigures(input, state, curve) });

  put("fit-long", withBothLong);
  const firstDriven = measured("driven-alone", bothLong);
  const drivenAlone = measured("driven-alone", planned);
  put("first-driven-alone", withBothLong, firstDriven);
  put("trim-driven", lengths, {
    ...drivenAlone,
    ...cut(driven.id, withBothLong.driven_m - driven.height_m, firstDriven.figures, drivenAlone.figures),
  });
  put("ground-loss", lengths, drivenAlone);
  if (reflector) {
    const first = measured("reflector-alone", reflectorLong);
    const alone = measured("reflector-alone", planned);
    put("first-reflector-alone", withReflectorLong, first);
    put("trim-reflector", lengths, {
      ...alone,
      ...cut(reflector.id, withReflectorLong.reflector_m! - reflector.height_m, first.figures, alone.figures),
    });
    const joined = measured("reflector-joined", planned);
    const ratio = currentRatio(input);
    put("reflector-joined", lengths, { ...joined, ...ratio });
    put("mutual", lengths, { mutual_ohm: mutual(input) });
    const perKHz = steps.find(({ kind }) => kind === "trim-driven")?.cut?.mmPerKHz;
    const at = joined.figures.resonance_MHz;
    put("retrim", lengths, {
      ...joined,
      ...ratio,
      ...(perKHz !== undefined && at && cutOf(driven.id, perKHz, 1e3 * (plan.frequency_MHz - at.value) * perKHz)),
    });
    put("on-air-trim", lengths);
    const alike = Math.abs(reflector.height_m - driven.height_m) < EQUAL_PART * driven.height_m;
    if (reflector.base.kind === "loaded" && alike) put("reversed", lengths, measured("reversed", planned));
  }
  put("record", lengths);
  if (reflector) put("prove", lengths);
  put("recheck", lengths, drivenAlone);
  return steps;
}

/** How each base stands in a state; without one as the plan says, no meter anywhere. */
function connected(
  { plan, roles }: StepsInput,
  index: number,
  own: ConnectedBase,
  state: BenchState | undefined,
): ConnectedBase {
  if (state === undefined) return own;
  if (index === meterAt(roles, state)) return "meter";
  if (state === "driven-alone" || state === "reflector-alone") return "open";
  return state === "reversed" && index === roles.driven ? plan.elements[roles.reflector!]!.base.kind : own;
}

function cut(
  elementId: string,
  off_m: number,
  before: ExpectedFigures,
  after: ExpectedFigures,
): Pick<ExpectedStep, "cut"> {
  const [low, high] = [before.resonance_MHz, after.resonance_MHz];
  if (!low || !high || off_m <= 0) return {};
  return cutOf(elementId, (1e3 * off_m) / (1e3 * (high.value - low.value)), 1e3 * off_m);
}

const cutOf = (elementId: string, mmPerKHz: number, whole_mm: number): Pick<ExpectedStep, "cut"> => ({
  cut: { elementId, mmPerKHz, whole_mm, first_mm: FIRST_PART * whole_mm },
});

function currentRatio({ plan, roles, planned }: StepsInput): Pick<ExpectedStep, "currentRatio"> {
  const { currents } = meterReading(plan, roles, planned.at(plan.frequency_MHz), "reflector-joined");
  const ratio = currents[roles.reflector!]!;
  return { currentRatio: { magnitude: cx.abs(ratio), phase_deg: (cx.arg(ratio) * 180) / Math.PI } };
}

function mutual({ plan, roles, planned, otherSoils }: StepsInput): {
  readonly resistance: Expected;
  readonly reactance: Expected;
} {
  const all = [planned, ...otherSoils].map((c) => c.at(plan.frequency_MHz)[roles.driven]![roles.reflector!]!);
  return { resistance: spread(all.map(({ re }) => re)), reactance: spread(all.map(({ im }) => im)) };
}
