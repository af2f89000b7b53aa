import type { AdviceRule, Expected, ExpectedStep } from "./ExpectedSheet.ts";

/**
 * Figures of common practice, no source: R at resonance of a quarter wave alone above 50 ohm speaks of loss in the ground,
 * below 30 ohm of a wrong reading; two like elements agree within 5 ohm or a tenth, and within a hundredth in frequency; a
 * reflector that resonates alone above 0.98 of the working frequency is on the steep side, and at the frequency itself it
 * no longer reflects. Where the plan's own ground says otherwise, its figure is taken.
 */
const LOSSY_OHM = 50;
const SUSPECT_OHM = 30;
const SUSPECT_FROM_WL = 0.23;
const STEEP_PART = 0.98;
const LIKE_OHM = 5;
const LIKE_PART = 0.1;
const LIKE_FREQUENCY_PART = 0.01;

/** What to think of at a step when its reading is not as expected, with the figure from which on. */
export function adviceFor(step: ExpectedStep, target_MHz: number, drivenHeight_wl: number): AdviceRule[] {
  const { figures, tolerance, state } = step;
  if (step.mutual_ohm) {
    const { resistance, reactance } = step.mutual_ohm;
    return [{ code: "mutual-off", limit: LIKE_OHM + width(resistance) + width(reactance) }];
  }
  if (!figures || !tolerance) return [];
  const rules: AdviceRule[] = [{ code: "read-through-lead", limit: null }];
  const r = figures.resonanceResistance_ohm;
  if (state === "driven-alone") {
    if (r) {
      rules.push({ code: "loss-in-ground", limit: Math.max(LOSSY_OHM, r.high + tolerance.resistance_ohm) });
      if (drivenHeight_wl > SUSPECT_FROM_WL)
        rules.push({ code: "reading-suspect", limit: Math.min(SUSPECT_OHM, r.low - tolerance.resistance_ohm) });
    }
    rules.push({ code: "other-base-not-open", limit: null });
  }
  if (state === "reflector-alone") {
    if (r) rules.push({ code: "elements-differ-R", limit: Math.max(LIKE_OHM, LIKE_PART * r.value) });
    rules.push({ code: "elements-differ-f", limit: LIKE_FREQUENCY_PART * target_MHz });
    rules.push({ code: "steep-side", limit: STEEP_PART * target_MHz });
    rules.push({ code: "points-backwards", limit: target_MHz });
    rules.push({ code: "other-base-not-open", limit: null });
  }
  if (state === "reflector-joined" || state === "reversed")
    rules.push({ code: "still-long", limit: figures.reactance_ohm.high + tolerance.reactance_ohm });
  if (figures.resonance_MHz)
    rules.push({
      code: "not-where-swr-is-least",
      limit: Math.abs(figures.leastSwr_MHz.value - figures.resonance_MHz.value),
    });
  return rules;
}

const width = ({ low, high }: Expected) => high - low;
