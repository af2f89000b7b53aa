import {
  type Complex,
  corePlan,
  drivenOf,
  type ElementPlan,
  loneVertical,
  type Plan,
  reflectorOf,
  wavelength_m,
} from "../../../../engine/index.ts";

export interface PairPlans {
  /** The driven alone. */
  readonly single: Plan;
  /** The driven and its reflector, as the plan has them. */
  readonly parasitic: Plan;
  /** Both fed: the driven first, the one behind second. */
  readonly fed: Plan;
  readonly spacing_m: number;
  /** The phase of the rear current at which equal currents cancel straight behind, at the horizon. */
  readonly nullPhase_deg: number;
}

/**
 * The plans a fed pair is compared by, all on the plan's radials and ground; null without a second element.
 *
 * @param asDrawn else the second element is as the first is: as long, as thick, on the same radials
 */
export function pairPlans(plan: Plan, asDrawn: boolean): PairPlans | null {
  const front = drivenOf(plan);
  const back = reflectorOf(plan);
  if (!front || !back) return null;
  const rear: ElementPlan = asDrawn
    ? { ...back, base: { kind: "fed" } }
    : { ...front, id: back.id, forward_m: back.forward_m, left_m: back.left_m, base: { kind: "fed" } };
  const core = corePlan(plan);
  const spacing_m = Math.hypot(front.forward_m - back.forward_m, front.left_m - back.left_m);
  const away_deg = (360 * spacing_m) / wavelength_m(plan.frequency_MHz);
  return {
    single: loneVertical(plan),
    parasitic: { ...core, elements: [front, back] },
    fed: { ...core, elements: [{ ...front, base: { kind: "fed" } }, rear] },
    spacing_m,
    nullPhase_deg: wrapped(180 - away_deg),
  };
}

/** Both elements fed with given currents: that of the second over that of the first. */
export function withCurrents(fed: Plan, ratio: Complex): Plan {
  const currents = [
    { magnitude: 1, phase_deg: 0 },
    { magnitude: Math.hypot(ratio.re, ratio.im), phase_deg: (Math.atan2(ratio.im, ratio.re) * 180) / Math.PI },
  ];
  return { ...fed, elements: fed.elements.map((e, i) => ({ ...e, base: { kind: "fed", current: currents[i]! } })) };
}

export const polar = (magnitude: number, phase_deg: number): Complex => ({
  re: magnitude * Math.cos((phase_deg * Math.PI) / 180),
  im: magnitude * Math.sin((phase_deg * Math.PI) / 180),
});

/** −180 to 180. */
const wrapped = (angle_deg: number) => ((((angle_deg + 180) % 360) + 360) % 360) - 180;
