import type { LooseAxis } from "./looseAxes.ts";
import type { Sensitivity, ToleranceFigures } from "./TolerancePicture.ts";

/** What "allowed" allows to be lost. */
export const LOST = { frontToBack_dB: 1, forward_dB: 0.3 } as const;
/** Steps in which a curve is walked outwards to where that much is lost. */
const STEPS = 80;
/** Half the step of a slope, as a part of what is looked at. */
const SLOPE_PART = 1e-3;
/** A heading is looked at to here either way [degrees]. */
const MOST_HEADING_DEG = 90;

/**
 * What one error alone does: the slope where the plan stands, by a central difference on the response's own curve, which goes
 * through full solves; figures at the ends of the error asked for; and how far it may go until 1 dB of front-to-back, or 0.3 dB
 * of gain ahead, is lost, where the curve first gets there.
 */
export function sensitivityOf(
  axis: LooseAxis,
  exact: ToleranceFigures,
  at: (x: number) => ToleranceFigures,
): Sensitivity {
  const { what, per, inUnits, from, to } = axis;
  const { less, more } = axis.limits;
  const ends = less > 0 || more > 0 ? { less: at(what === "soil" ? 0 : -less), more: at(more) } : null;
  if (what === "soil" && ends)
    return {
      what,
      per,
      slope: combined(ends.more, ends.less, (a, b) => a - b),
      ends,
      allowed: { frontToBack: { less: null, more: null }, forward: { less: null, more: null } },
      lookedAt: { less: 0, more: 0 },
    };
  const step = SLOPE_PART * Math.max(to, -from);
  const [low, high] = [Math.max(from, -step), Math.min(to, step)];
  const extent = inUnits(high) - inUnits(low);
  const outward = (end: number, lost: (figures: ToleranceFigures) => boolean) => {
    const x = firstLoss(end, (value) => lost(at(value)));
    return x === null ? null : Math.abs(inUnits(x));
  };
  return {
    what,
    per,
    slope: combined(at(high), at(low), (a, b) => (a - b) / extent),
    ends,
    allowed: allowedBy(exact, from, to, outward),
    lookedAt: { less: Math.abs(inUnits(from)), more: inUnits(to) },
  };
}

/** What pointing it wrong does; nothing is solved for that. */
export function headingSensitivity(
  error_deg: number,
  exact: ToleranceFigures,
  at: (off_deg: number) => ToleranceFigures,
): Sensitivity {
  return sensitivityOf(
    {
      what: "heading",
      per: "degree",
      limits: { less: error_deg, more: error_deg },
      from: -MOST_HEADING_DEG,
      to: MOST_HEADING_DEG,
      shifted: (plan) => plan,
      inUnits: (x) => x,
      drawn: (share) => share * error_deg,
    },
    exact,
    at,
  );
}

function allowedBy(
  exact: ToleranceFigures,
  from: number,
  to: number,
  outward: (end: number, lost: (figures: ToleranceFigures) => boolean) => number | null,
): Sensitivity["allowed"] {
  const back = (figures: ToleranceFigures) => figures.frontToBack_dB < exact.frontToBack_dB - LOST.frontToBack_dB;
  const ahead = (figures: ToleranceFigures) => figures.forward_dBi < exact.forward_dBi - LOST.forward_dB;
  return {
    frontToBack: { less: outward(from, back), more: outward(to, back) },
    forward: { less: outward(from, ahead), more: outward(to, ahead) },
  };
}

/** The first place from 0 to `end` at which something is lost, to a 4096th of a step; null: nowhere. */
function firstLoss(end: number, isLost: (x: number) => boolean): number | null {
  let kept = 0;
  for (let i = 1; i <= STEPS; i++) {
    let lost = (end * i) / STEPS;
    if (!isLost(lost)) {
      kept = lost;
      continue;
    }
    for (let round = 0; round < 12; round++) {
      const middle = (kept + lost) / 2;
      if (isLost(middle)) lost = middle;
      else kept = middle;
    }
    return kept;
  }
  return null;
}

function combined(
  one: ToleranceFigures,
  other: ToleranceFigures,
  by: (a: number, b: number) => number,
): ToleranceFigures {
  return {
    forward_dBi: by(one.forward_dBi, other.forward_dBi),
    frontToBack_dB: by(one.frontToBack_dB, other.frontToBack_dB),
    frontToRear_dB: by(one.frontToRear_dB, other.frontToRear_dB),
    resistance_ohm: by(one.resistance_ohm, other.resistance_ohm),
    reactance_ohm: by(one.reactance_ohm, other.reactance_ohm),
    swr50: by(one.swr50, other.swr50),
  };
}
