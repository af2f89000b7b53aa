import { type AmateurBand, type Plan, type SavedPlan, withFrequency } from "../../engine/index.ts";

/**
 * A third of the way up the band, to the kilohertz: an array with a reflector falls off faster below its design
 * frequency than above it (common practice, no source).
 */
export function usualFrequency_MHz({
  from_MHz,
  to_MHz,
}: {
  readonly from_MHz: number;
  readonly to_MHz: number;
}): number {
  return Math.round(1000 * (from_MHz + (to_MHz - from_MHz) / 3)) / 1000;
}

/** The plan, and its pinned designs, on another band: at its usual frequency, all lengths scaled when asked. */
export function movedToBand(plan: SavedPlan, band: AmateurBand, isScaled: boolean): SavedPlan {
  const { label, from_MHz, to_MHz } = band;
  const frequency_MHz = usualFrequency_MHz(band);
  const move = <P extends Plan>(one: P): P =>
    withFrequency(isScaled ? withLengths(one, one.frequency_MHz / frequency_MHz) : one, frequency_MHz);
  return {
    ...move(plan),
    band: { label, from_MHz, to_MHz },
    ...(plan.pins && isScaled ? { pins: plan.pins.map((pin) => ({ ...pin, plan: move(pin.plan) })) } : {}),
  };
}

/** Heights, places and radial lengths times a factor; conductors and how high radials lie stay what they are. */
function withLengths<P extends Plan>(plan: P, factor: number): P {
  const scaled = (length_m: number) => Math.round(1000 * length_m * factor) / 1000;
  return {
    ...plan,
    elements: plan.elements.map((element) => ({
      ...element,
      forward_m: scaled(element.forward_m),
      left_m: scaled(element.left_m),
      height_m: scaled(element.height_m),
      radials: { ...element.radials, length_m: scaled(element.radials.length_m) },
    })),
  };
}
