import type { Plan } from "../contract.ts";
import { checkPlan } from "../plan/checkPlan.ts";
import { corePlan } from "../plan/edits/corePlan.ts";
import { withElementHeight } from "../plan/edits/withElementHeight.ts";
import { Findings } from "../plan/Findings.ts";
import { failed, ok, type Result } from "../result.ts";
import type { Trial } from "../sweep/trial/Trial.ts";
import { benchRoles } from "./benchRoles.ts";
import { checkAllowance } from "./checkAllowance.ts";
import type { ExpectedRequest, ExpectedSheet } from "./ExpectedSheet.ts";
import { expectedSteps } from "./expectedSteps.ts";
import { type MatrixCurve, matrixCurve } from "./matrixCurve.ts";
import { soilsAround } from "./soilsAround.ts";

/** Looked at on either side of the plan's frequency: far enough down for what is cut long and resonates lower. */
const BELOW = 0.05;
const ABOVE = 0.05;

/**
 * What the meter will show at every step of building: a trial, so that its solves can be spread and stopped. Its picture
 * grows: the plan's own soil first, then with a drier and a wetter one.
 *
 * One solve gives all states at its frequency (see `meterReading`); over frequency they are curves with a checked error
 * (`matrixCurve`); the plan's own soil is solved at three pairs of lengths (as planned; reflector cut long; both cut
 * long), from which come millimetres per kilohertz. Accuracy: that of the plan's soil model, and `error_ohm`.
 *
 * Problems: those of the plan; not exactly one fed element; allowances out of range.
 */
export function expectedReadings(request: ExpectedRequest): Result<Trial<ExpectedSheet>> {
  const checked = checkPlan(request.plan);
  const findings = new Findings();
  checkAllowance(findings, "allowance", request.allowance);
  if (!checked.ok) return failed(...checked.problems, ...findings.problems);
  const roles = benchRoles(checked.value);
  if (!roles.ok || findings.problems.length > 0)
    return failed(...findings.problems, ...(roles.ok ? [] : roles.problems));

  const plan = corePlan(checked.value);
  const { driven, reflector } = roles.value;
  const { driven_percent, reflector_percent } = request.allowance;
  const longBy = (of: Plan, index: number | undefined, percent: number): Plan => {
    const element = index === undefined ? undefined : of.elements[index];
    return element ? withElementHeight(of, element.id, element.height_m * (1 + percent / 100)) : of;
  };
  const reflectorLong = longBy(plan, reflector, reflector_percent);
  const bothLong = longBy(reflectorLong, driven, driven_percent);
  const longest = Math.max(driven_percent, reflector === undefined ? 0 : reflector_percent) / 100;
  const from_MHz = (plan.frequency_MHz * (1 - BELOW)) / (1 + longest);
  const to_MHz = plan.frequency_MHz * (1 + ABOVE);
  const soils = soilsAround(plan.ground);
  // The plan itself, then what shares its soil and frequencies, then other soils.
  const wanted: Plan[] = [
    plan,
    ...(reflector === undefined ? [] : [reflectorLong]),
    bothLong,
    ...soils.slice(1).map(({ ground }) => ({ ...plan, ground })),
  ];
  const own = wanted.length - (soils.length - 1);

  return ok((known) => {
    const asks = [];
    const curves: (MatrixCurve | undefined)[] = [];
    for (const one of wanted) {
      const step = matrixCurve(one, from_MHz, to_MHz, known);
      if (!step.ok) return step;
      asks.push(...step.value.asks);
      curves.push(step.value.curve);
    }
    const done = curves.filter((curve) => curve !== undefined).length;
    const ready = curves.slice(0, own).every((curve) => curve !== undefined);
    const picture = ready
      ? sheetOf(request, plan, curves as readonly MatrixCurve[], soils, own, { from_MHz, to_MHz })
      : null;
    return ok({ asks, picture, part: done / wanted.length });
  });

  function sheetOf(
    { allowance }: ExpectedRequest,
    of: Plan,
    curves: readonly (MatrixCurve | undefined)[],
    around: typeof soils,
    ownCount: number,
    span: { readonly from_MHz: number; readonly to_MHz: number },
  ): ExpectedSheet {
    const solvedSoils = around.filter((_, s) => s === 0 || curves[ownCount + s - 1] !== undefined);
    const others = curves.slice(ownCount).filter((curve) => curve !== undefined);
    const all = [...curves.slice(0, ownCount), ...others] as readonly MatrixCurve[];
    return {
      frequency_MHz: of.frequency_MHz,
      soils: solvedSoils,
      ...span,
      steps: expectedSteps({
        plan: of,
        roles: roles.ok ? roles.value : { driven: 0 },
        allowance,
        ...span,
        planned: all[0]!,
        reflectorLong: all[ownCount - 2]!,
        bothLong: all[ownCount - 1]!,
        otherSoils: others,
      }),
      error_ohm: Math.max(...all.map((curve) => curve.error_ohm)),
      isPreview: of.ground.kind === "soil" && of.soilModel === "screen",
    };
  }
}
