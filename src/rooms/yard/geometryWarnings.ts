import type { ElementPlan, Plan } from "../../../engine/index.ts";
import { drivenOf, reflectorOf, wavelength_m } from "../../../engine/index.ts";

/** The field a warning stands beside. */
export type WarnedField = "spacing" | "height" | "diameter" | "base" | "radialCount" | "radialLength";

export interface GeometryWarning {
  readonly code: string;
  readonly field: WarnedField;
  /** Whose field; absent: it concerns the array. */
  readonly elementId?: string;
  readonly message: string;
}

/**
 * Where each warning begins. Common practice of builders rather than one source; the engine's own answer says how
 * much each costs in the plan at hand, so the texts promise no figures.
 */
export const warningLimits = {
  spacingClose_wl: 0.1,
  spacingFar_wl: 0.3,
  /** A reflector of the driven's thickness should be longer by at least this. */
  reflectorLonger: 0.02,
  fewRadials: 8,
  /** Radials longer than this, and fewer than `sparseCount`, are long and sparse. */
  longRadial_wl: 0.25,
  sparseCount: 16,
  /** Higher than this, radials are raised and not lying. */
  raised_m: 0.1,
} as const;

/**
 * Everything that can be said against a plan from its measures alone, without solving it, in plan order. A message
 * gives its limit and not the measure, which stands in the field: it stays the same words while a hand drags on.
 */
export function geometryWarnings(plan: Plan): GeometryWarning[] {
  const wavelength = wavelength_m(plan.frequency_MHz);
  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  return [
    ...(driven && reflector ? betweenDrivenAndReflector(driven, reflector, wavelength) : []),
    // Over a perfect ground radials carry nothing.
    ...(plan.ground.kind === "soil"
      ? [
          ...(driven && reflector ? ofUnlikeGrounds(driven, reflector) : []),
          ...plan.elements.flatMap((element) => ofRadials(element, wavelength)),
          ...ofOverlap(plan.elements),
        ]
      : []),
  ];
}

function betweenDrivenAndReflector(driven: ElementPlan, reflector: ElementPlan, wavelength: number): GeometryWarning[] {
  const found: GeometryWarning[] = [];
  const apart_wl = distance(driven, reflector) / wavelength;
  const elementId = reflector.id;

  if (reflector.forward_m >= driven.forward_m)
    found.push({
      code: "reflector-ahead",
      field: "spacing",
      message: "The unfed element stands level with or ahead of the driven one; a reflector stands behind it.",
    });
  if (apart_wl < warningLimits.spacingClose_wl)
    found.push({
      code: "spacing-close",
      field: "spacing",
      message: `Closer together than ${warningLimits.spacingClose_wl} wl: losses in the ground eat into the gain, and the match narrows.`,
    });
  if (apart_wl > warningLimits.spacingFar_wl)
    found.push({
      code: "spacing-far",
      field: "spacing",
      message: `Further apart than ${warningLimits.spacingFar_wl} wl: the coupling is weak, and gain and front-to-back fade.`,
    });

  if (reflector.base.kind === "open")
    found.push({
      code: "reflector-open",
      field: "base",
      elementId,
      message: "The reflector's base is joined to nothing; a floating quarter wave does almost nothing.",
    });
  if (reflector.diameter_mm !== driven.diameter_mm)
    found.push({
      code: "unlike-diameters",
      field: "diameter",
      elementId,
      message:
        "The two conductors differ in thickness, so percent longer says little; go by the answer, not by the percentage.",
    });
  else if (
    reflector.base.kind === "joined" &&
    reflector.height_m < driven.height_m * (1 + warningLimits.reflectorLonger)
  )
    found.push({
      code: "reflector-short",
      field: "height",
      elementId,
      message: `Less than ${100 * warningLimits.reflectorLonger} % longer than the driven: the steep side, where a reflector a little shorter can turn the beam round.`,
    });
  return found;
}

function ofUnlikeGrounds(driven: ElementPlan, reflector: ElementPlan): GeometryWarning[] {
  const count = reflector.radials.count;
  if (reflector.base.kind === "open" || (count > 0 && count >= driven.radials.count / 2)) return [];
  return [
    {
      code: "reflector-few-radials",
      field: "radialCount",
      elementId: reflector.id,
      message: `The reflector has ${count} radials, the driven element ${driven.radials.count}. With fewer than half as many it works against a poor ground: front-to-back suffers first.`,
    },
  ];
}

function ofRadials(element: ElementPlan, wavelength: number): GeometryWarning[] {
  const { count, length_m, height_m } = element.radials;
  const elementId = element.id;
  const found: GeometryWarning[] = [];
  if (element.base.kind !== "open" && count < warningLimits.fewRadials)
    found.push({
      code: height_m > warningLimits.raised_m ? "few-raised-radials" : "few-radials",
      field: "radialCount",
      elementId,
      message:
        height_m > warningLimits.raised_m
          ? `Fewer than ${warningLimits.fewRadials} raised radials carry uneven currents easily: cut them alike to 1 %, and choke the feed line.`
          : `Fewer than ${warningLimits.fewRadials} radials: the soil takes a good share of the power, and how the wires lie (on the grass, a hand above it, buried) matters as much as the rest.`,
    });
  if (
    count > 0 &&
    count < warningLimits.sparseCount &&
    height_m <= warningLimits.raised_m &&
    length_m > warningLimits.longRadial_wl * wavelength
  )
    found.push({
      code: "long-sparse-radials",
      field: "radialLength",
      elementId,
      message: `Longer than ${warningLimits.longRadial_wl} wl but fewer than ${warningLimits.sparseCount}: long sparse radials can lose more than short ones. The same wire in more, shorter pieces is worth comparing.`,
    });
  return found;
}

function ofOverlap(elements: readonly ElementPlan[]): GeometryWarning[] {
  const crossed = elements.some((one, i) => elements.slice(0, i).some((other) => overlapOfFields(one, other) > 0));
  if (!crossed) return [];
  return [
    {
      code: "radials-overlap",
      field: "radialLength",
      message:
        "The radial fields overlap. Either end both on a shared wire across the line between the elements, or let insulated wires cross untouched; builders report little difference. Bond hub to hub in any case.",
    },
  ];
}

/** Whether a warning is about places and lengths; the others are about wire. */
export const isOfArray = ({ field }: GeometryWarning): boolean =>
  field === "spacing" || field === "height" || field === "base";

/** How far two circles of radials reach into each other along the line between their hubs [m]; ≤ 0: not at all. */
export function overlapOfFields(one: ElementPlan, other: ElementPlan): number {
  if (one.radials.count === 0 || other.radials.count === 0) return 0;
  return one.radials.length_m + other.radials.length_m - distance(one, other);
}

function distance(one: ElementPlan, other: ElementPlan): number {
  return Math.hypot(one.forward_m - other.forward_m, one.left_m - other.left_m);
}
