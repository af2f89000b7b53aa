import { drivenOf, type SavedPlan } from "../../../../engine/index.ts";
import { elementName } from "../../yard/elementName.ts";
import { headingOf } from "../../yard/heading.ts";

export interface Stake {
  readonly letter: string;
  readonly name: string;
  readonly forward_m: number;
  readonly left_m: number;
  /** From the datum. */
  readonly distance_m: number;
  /** Null at the datum itself. */
  readonly trueBearing_deg: number | null;
  /** As a compass shows it; null without a declination. */
  readonly magneticBearing_deg: number | null;
}

export interface Diagonal {
  readonly from: string;
  readonly to: string;
  readonly distance_m: number;
}

export interface StakeOut {
  /** Letter A: the driven's base. */
  readonly stakes: readonly Stake[];
  /** Distances between stakes other than the datum: they agree only where all bearings do. */
  readonly diagonals: readonly Diagonal[];
}

/** A stake to the side stands at least this far out, so that its diagonals tell a wrong bearing. */
const leastAside_m = 2;

/**
 * Where to drive stakes, from one datum, the driven's base: every other base, and one stake to either side of each base,
 * square to the beam, as far out as its radials reach. The diagonals across check what a compass got wrong: to the left
 * and right they are of equal length. A compass shows true bearing − declination (east positive).
 */
export function stakeOut(plan: SavedPlan, declination_deg: number | undefined): StakeOut {
  const datum = drivenOf(plan) ?? plan.elements[0]!;
  const heading = headingOf(plan);
  const others = plan.elements.filter((one) => one !== datum);
  const sides = [datum, ...others].flatMap((element) => {
    const out_m = Math.max(leastAside_m, element.radials.count > 0 ? element.radials.length_m : 0);
    const name = elementName(plan, element);
    return [
      { name: `left of the ${name}`, forward_m: element.forward_m, left_m: element.left_m + out_m },
      { name: `right of the ${name}`, forward_m: element.forward_m, left_m: element.left_m - out_m },
    ];
  });
  const places = [
    { name: `${elementName(plan, datum)}, base: the datum`, forward_m: datum.forward_m, left_m: datum.left_m },
    ...others.map((one) => ({
      name: `${elementName(plan, one)}, base`,
      forward_m: one.forward_m,
      left_m: one.left_m,
    })),
    ...sides,
  ];
  const stakes = places.map(({ name, forward_m, left_m }, i): Stake => {
    const ahead = forward_m - datum.forward_m;
    const left = left_m - datum.left_m;
    const distance_m = Math.hypot(ahead, left);
    // Azimuth runs counter-clockwise from the beam, bearings clockwise from north.
    const bearing = i === 0 ? null : turn(heading - (Math.atan2(left, ahead) * 180) / Math.PI);
    return {
      letter: letterOf(i),
      name,
      forward_m,
      left_m,
      distance_m,
      trueBearing_deg: bearing,
      magneticBearing_deg: bearing === null || declination_deg === undefined ? null : turn(bearing - declination_deg),
    };
  });
  const bases = stakes.slice(0, plan.elements.length);
  const aside = stakes.slice(plan.elements.length);
  // From each base to the side stakes of the others: for a pair, the four diagonals of the field.
  const diagonals = bases.slice(1).flatMap((base) =>
    aside
      .filter((stake) => stake.forward_m !== base.forward_m)
      .map(
        (stake): Diagonal => ({
          from: base.letter,
          to: stake.letter,
          distance_m: Math.hypot(stake.forward_m - base.forward_m, stake.left_m - base.left_m),
        }),
      ),
  );
  const across = aside.flatMap((one, i) =>
    aside.slice(i + 1).flatMap((other): Diagonal[] => {
      const isAcross =
        one.forward_m !== other.forward_m && (one.left_m - datum.left_m) * (other.left_m - datum.left_m) < 0;
      return isAcross
        ? [
            {
              from: one.letter,
              to: other.letter,
              distance_m: Math.hypot(one.forward_m - other.forward_m, one.left_m - other.left_m),
            },
          ]
        : [];
    }),
  );
  return { stakes, diagonals: [...diagonals, ...across] };
}

const letterOf = (i: number) => String.fromCharCode(65 + i);
const turn = (angle: number) => ((angle % 360) + 360) % 360;
