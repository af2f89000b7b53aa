import { type ElementPlan, type PlanReadout, radialDirections } from "../../../engine/index.ts";
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
export function mostCurrent(fields: readonly RadialCurrents[]): number {
  return Math.max(0, ...fields.flatMap((field) => field.relative.flat()));
}

/**
 * The radials of one element seen from above, drawn as wide as their current is strong: `most` gives the widest line,
 * nothing the thinnest. One path for each width.
 */
export function currentLines(
  frame: PlanFrame,
  heading_deg: number,
  element: ElementPlan,
  { at_m, relative }: RadialCurrents,
  most: number,
): CurrentLine[] {
  const pieces: string[][] = Array.from({ length: steps + 1 }, () => []);
  const azimuths = radialDirections(element.radials.count);
  for (const [r, along] of relative.entries()) {
    const azimuth = azimuths[r]!;
    const points = at_m.map((out_m) =>
      toSheet(
        frame,
        heading_deg,
        element.forward_m + out_m * Math.cos(azimuth),
        element.left_m + out_m * Math.sin(azimuth),
      ),
    );
    for (let i = 1; i < points.length; i++) {
      const middle = (along[i - 1]! + along[i]!) / 2;
      const step = Math.round((steps * middle) / most);
      const [a, b] = [points[i - 1]!, points[i]!];
      pieces[step]?.push(`M${a.x.toFixed(1)} ${a.y.toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}`);
    }
  }
  return pieces.flatMap((d, step) =>
    d.length > 0 ? [{ width_px: thinnest_px + ((thickest_px - thinnest_px) * step) / steps, d: d.join("") }] : [],
  );
}
