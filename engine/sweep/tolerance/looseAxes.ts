import type { Plan } from "../../contract.ts";
import { drivenOf } from "../../plan/edits/drivenOf.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { spacingOf } from "../../plan/edits/spacingOf.ts";
import { limits } from "../../plan/limits.ts";
import { wavelength_m } from "../../units.ts";
import { pairAt } from "../trial/pairAt.ts";
import type { Loose, Sensitivity } from "./TolerancePicture.ts";
import type { ToleranceRequest } from "./ToleranceRequest.ts";

/** How far lengths, the spacing and the thickness are looked at either way, unless more is asked for. */
const LENGTH_PART = 0.08;
const SPACING_PART = 0.3;
const THICKNESS_FACTOR = 2;

/** One respect in which the wires may be off, as a number x that is 0 where the plan stands. */
export interface LooseAxis {
  readonly what: Loose;
  readonly per: Sensitivity["per"];
  /** Off by up to this: x from −limits.less to limits.more; both 0: exact. */
  readonly limits: { readonly less: number; readonly more: number };
  /** Looked at from here to there. Soil: from 0, dry, to 1, wet, and the plan is nowhere on it. */
  readonly from: number;
  readonly to: number;
  /** The plan, off by x. */
  readonly shifted: (plan: Plan, x: number) => Plan;
  /** x in the unit of `per`, and what is off by a share −1..1 of the limits, all shares equally likely. */
  readonly inUnits: (x: number) => number;
  readonly drawn: (share: number) => number;
}

/** What of a plan can be off, in the order it is told in; only what the plan has. */
export function looseAxes({ plan, errors, soil }: ToleranceRequest): readonly LooseAxis[] {
  const wavelength = wavelength_m(plan.frequency_MHz);
  const [driven, reflector] = [drivenOf(plan), reflectorOf(plan)];
  const spacing_m = spacingOf(plan);
  const axes: LooseAxis[] = [];
  const length = (what: "driven" | "reflector", height_m: number, error_m: number): LooseAxis => {
    const range_m = Math.max(LENGTH_PART * height_m, error_m);
    const longest_m = Math.min(limits.height_wl.most * wavelength, limits.length_m);
    return {
      what,
      per: "cm",
      limits: { less: error_m, more: error_m },
      from: Math.max(-range_m, limits.height_wl.least * wavelength - height_m),
      to: Math.min(range_m, longest_m - height_m),
      shifted: (from, x) => withHeight(from, what, height_m + x),
      inUnits: (x) => 100 * x,
      drawn: (share) => share * error_m,
    };
  };
  if (driven) axes.push(length("driven", driven.height_m, errors.driven_m));
  if (driven && reflector && spacing_m !== undefined) {
    axes.push(length("reflector", reflector.height_m, errors.reflector_m));
    const range_m = Math.max(SPACING_PART * Math.abs(spacing_m), errors.spacing_m);
    axes.push({
      what: "spacing",
      per: "cm",
      limits: { less: errors.spacing_m, more: errors.spacing_m },
      from: -range_m,
      to: range_m,
      shifted: (from, x) => pairAt(from, { spacing_m: spacing_m + x }),
      inUnits: (x) => 100 * x,
      drawn: (share) => share * errors.spacing_m,
    });
  }
  axes.push(thicknessAxis(plan, wavelength, errors.thickness));
  if (soil && plan.ground.kind === "soil") {
    const between = (dry: number, wet: number, x: number) =>
      // A soil of no conductivity has no logarithm.
      dry > 0 && wet > 0 ? dry * (wet / dry) ** x : dry + (wet - dry) * x;
    axes.push({
      what: "soil",
      per: "span",
      limits: { less: 0, more: 1 },
      from: 0,
      to: 1,
      shifted: (from, x) => ({
        ...from,
        ground: {
          kind: "soil",
          relativePermittivity: between(soil.dry.relativePermittivity, soil.wet.relativePermittivity, x),
          conductivity_SPerM: between(soil.dry.conductivity_SPerM, soil.wet.conductivity_SPerM, x),
        },
      }),
      inUnits: (x) => x,
      drawn: (share) => (share + 1) / 2,
    });
  }
  return axes;
}

/** Thickness by the logarithm of its factor, which is what impedances go by. */
function thicknessAxis(plan: Plan, wavelength: number, error: number): LooseAxis {
  const { least, most } = limits.diameter_wl;
  const factors = plan.elements.map(({ diameter_mm, height_m }) => ({
    least: (least * wavelength * 1000) / diameter_mm,
    // Elements may also come out 8 % shorter.
    most:
      Math.min(most * wavelength, (height_m * (1 - LENGTH_PART)) / limits.lengthOverDiameter) / (diameter_mm / 1000),
  }));
  const range = Math.max(Math.log(THICKNESS_FACTOR), -Math.log(1 - error));
  return {
    what: "thickness",
    per: "percent",
    limits: { less: -Math.log(1 - error), more: Math.log(1 + error) },
    from: Math.max(-range, Math.log(Math.max(...factors.map((factor) => factor.least)))),
    to: Math.min(range, Math.log(Math.min(...factors.map((factor) => factor.most)))),
    shifted: (from, x) => ({
      ...from,
      elements: from.elements.map((element) => ({ ...element, diameter_mm: element.diameter_mm * Math.exp(x) })),
    }),
    inUnits: (x) => 100 * (Math.exp(x) - 1),
    drawn: (share) => Math.log(1 + share * error),
  };
}

function withHeight(plan: Plan, what: "driven" | "reflector", height_m: number): Plan {
  const element = what === "driven" ? drivenOf(plan) : reflectorOf(plan);
  if (!element) throw new RangeError(`looseAxes: the plan has no ${what}`);
  return { ...plan, elements: plan.elements.map((one) => (one.id === element.id ? { ...one, height_m } : one)) };
}
