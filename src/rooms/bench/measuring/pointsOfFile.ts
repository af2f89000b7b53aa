import {
  type BenchPoint,
  type ExpectedSheet,
  failed,
  ok,
  type Result,
  type TouchstonePoint,
} from "../../../../engine/index.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { bounds } from "../bounds.ts";

/**
 * What is kept of a sweep from a file: the points within what is looked at, and the nearest on either side of it; where
 * those are more than a reading holds, evenly picked ones, first and last among them. Problem: none lies there.
 */
export function pointsOfFile(
  points: readonly TouchstonePoint[],
  { from_MHz, to_MHz }: Pick<ExpectedSheet, "from_MHz" | "to_MHz">,
): Result<readonly BenchPoint[]> {
  const inside = points.filter(({ frequency_MHz: f }) => f >= from_MHz && f <= to_MHz);
  if (inside.length === 0)
    return failed({
      code: "nothing-here",
      where: "points",
      message: `The file runs from ${megahertz(points[0]?.frequency_MHz ?? Number.NaN)} to ${megahertz(points.at(-1)?.frequency_MHz ?? Number.NaN)} MHz; none of it lies between ${megahertz(from_MHz)} and ${megahertz(to_MHz)} MHz, where this plan is measured.`,
    });
  const bad = inside.find(({ impedance_ohm: z }) => !(z.re > 0 && Number.isFinite(z.re + z.im)));
  if (bad)
    return failed({
      code: "not-passive",
      where: "points",
      message: `At ${megahertz(bad.frequency_MHz)} MHz the file has a resistance of ${bad.impedance_ohm.re.toFixed(1)} ohm; it must be above 0 ohm. Calibrate and sweep again.`,
    });
  const count = Math.min(inside.length, bounds.pointsKept);
  return ok(
    Array.from({ length: count }, (_, i) => {
      const { frequency_MHz, impedance_ohm } =
        inside[count === 1 ? 0 : Math.round((i * (inside.length - 1)) / (count - 1))]!;
      return { frequency_MHz, resistance_ohm: impedance_ohm.re, reactance_ohm: impedance_ohm.im };
    }),
  );
}
