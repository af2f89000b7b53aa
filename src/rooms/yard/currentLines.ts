import type { PlanReadout } from "../../../engine/index.ts";
import type { PlanFrame } from "./planFrame.ts";
import { toSheet } from "./planFrame.ts";

export type RadialCurrents = NonNullable<PlanReadout["radialCurrents"]>[number];

export interface CurrentLine {
  readonly width_px: number;
  /** An SVG path. */
  readonly d: string;
}

const thinnest_px = 0.5;
const thickest_px = 4.5;
/** Widths are in steps, so that even 240 radials are a few paths. */
const steps = 8;

/** The largest current in any of the radials, relative to the first fed base's. */
export function mostCurrent(wires: readonly RadialCurrents[]): number {
  return wires.reduce((most, { relative }) => relative.reduce((a, b) => Math.max(a, b), most), 0);
}

/**
 * Radials, and what joins them, seen from above, drawn as wide as their current is strong: `most` gives the widest line,
 * nothing the thinnest. One path for each width.
 */
export function currentLines(
  frame: PlanFrame,
  heading_deg: number,
  wires: readonly RadialCurrents[],
  most: number,
): CurrentLine[] {
  const pieces: string[][] = Array.from({ length: steps + 1 }, () => []);
  for (const { from_m, to_m, at_m, relative } of wires) {
    const points = at_m.map((out_m) => {
      const part = out_m / at_m.at(-1)!;
      const forward_m = from_m[0] + part * (to_m[0] - from_m[0]);
      const left_m = from_m[1] + part * (to_m[1] - from_m[1]);
      return toSheet(frame, heading_deg, forward_m, left_m);
    });
    for (let i = 1; i < points.length; i++) {
      const middle = (relative[i - 1]! + relative[i]!) / 2;
      const step = Math.round((steps * middle) / most);
      const [a, b] = [points[i - 1]!, points[i]!];
      pieces[step]?.push(`M${a.x.toFixed(1)} ${a.y.toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}`);
    }
  }
  return pieces.flatMap((d, step) =>
    d.length > 0 ? [{ width_px: thinnest_px + ((thickest_px - thinnest_px) * step) / steps, d: d.join("") }] : [],
  );
}
