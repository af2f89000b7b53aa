import { type Complex, smithCircles } from "../../../../engine/index.ts";
import type { Spot } from "../../../charts/tracePath.ts";

export interface SmithRule {
  readonly id: string;
  readonly path: string;
  /** Where its number stands; absent for rules without one. */
  readonly mark?: { readonly at: Spot; readonly text: string; readonly side: "start" | "middle" | "end" };
}

export interface SmithLayout {
  readonly size_px: number;
  readonly hub: Spot;
  /** Radius of what is shown, and of the unit circle. */
  readonly window: number;
  readonly reach: number;
  /** Where a reflection coefficient lies. */
  point(reflection: Complex): Spot;
  readonly rules: readonly SmithRule[];
  /** A circle of one SWR around the middle. */
  swrRadius(swr: number): number;
}

const coarse = { resistances: [0.2, 0.5, 1, 2, 5], reactances: [0.2, 0.5, 1, 2, 5] };
/** For the middle alone. */
const fine = { resistances: [0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6], reactances: [0.1, 0.2, 0.3, 0.4] };

/**
 * The reflection chart in a square: the unit circle of Γ, circles of constant resistance and arcs of constant reactance,
 * numbered in ohm for the reference. Reactance above zero (a coil's) is in the upper half.
 *
 * @param zoom 1: the whole chart in its rim; above: only its middle, that much larger, in a window of the same size
 */
export function smithLayout(width_px: number, text_px: number, reference_ohm: number, zoom = 1): SmithLayout {
  const margin = 3.1 * text_px;
  const size_px = Math.max(200, Math.min(width_px, 460));
  const window = size_px / 2 - margin;
  const reach = window * zoom;
  const hub: Spot = [size_px / 2, size_px / 2];
  const point = ({ re, im }: Complex): Spot => [hub[0] + re * reach, hub[1] - im * reach];
  const isSeen = ([x, y]: Spot) => Math.hypot(x - hub[0], y - hub[1]) < window - text_px || zoom === 1;
  const { resistances, reactances } = zoom === 1 ? coarse : fine;
  /** Where a reactance meets the resistance of the reference, in sight of the middle. */
  const onResistance = (x: number): NonNullable<SmithRule["mark"]> => {
    // Γ of 1 + jx.
    const size = 4 + x * x;
    const [px, py] = point({ re: (x * x) / size, im: (2 * x) / size });
    return { at: [px + 4, py], text: `${x > 0 ? "+j" : "−j"}${ohms(Math.abs(x) * reference_ohm)}`, side: "start" };
  };
  const all: SmithRule[] = [
    ...resistances.map((r): SmithRule => {
      const { re, radius } = smithCircles.resistance(r);
      const left = point({ re: re - radius, im: 0 });
      return {
        id: `r${r}`,
        path: circlePath(point({ re, im: 0 }), radius * reach),
        mark: { at: [left[0] + 3, left[1] - 0.6 * text_px], text: ohms(r * reference_ohm), side: "start" },
      };
    }),
    ...reactances
      .flatMap((x) => [x, -x])
      .map((x): SmithRule => {
        // From the rim, where |Γ| = 1 and R = 0: Γ = (jx − 1)/(jx + 1), to the open end at Γ = 1.
        const rim = { re: (x * x - 1) / (x * x + 1), im: (2 * x) / (x * x + 1) };
        const { radius } = smithCircles.reactance(x);
        const [fx, fy] = point(rim);
        const [tx, ty] = point({ re: 1, im: 0 });
        const bend = (radius * reach).toFixed(1);
        return {
          id: `x${x}`,
          path: `M${fx.toFixed(1)},${fy.toFixed(1)}A${bend},${bend},0,0,${x > 0 ? 0 : 1},${tx.toFixed(1)},${ty.toFixed(1)}`,
          mark:
            zoom > 1
              ? onResistance(x)
              : {
                  at: [hub[0] + rim.re * (reach + 0.5 * text_px), hub[1] - rim.im * (reach + 0.9 * text_px)],
                  text: `${x > 0 ? "+j" : "−j"}${ohms(Math.abs(x) * reference_ohm)}`,
                  side: Math.abs(rim.re) < 0.2 ? "middle" : rim.re < 0 ? "end" : "start",
                },
        };
      }),
  ];
  const rules = all.map(({ id, path, mark }) => (mark && isSeen(mark.at) ? { id, path, mark } : { id, path }));
  return { size_px, hub, window, reach, point, rules, swrRadius: (swr) => smithCircles.swr(swr).radius * reach };
}

/** A whole circle as a path, so that it is drawn like every other rule. */
function circlePath([x, y]: Spot, r: number): string {
  const d = (2 * r).toFixed(1);
  const bend = r.toFixed(1);
  return `M${(x - r).toFixed(1)},${y.toFixed(1)}a${bend},${bend},0,1,0,${d},0a${bend},${bend},0,1,0,-${d},0Z`;
}

const ohms = (value: number) => `${Number(value.toPrecision(3))}`;
