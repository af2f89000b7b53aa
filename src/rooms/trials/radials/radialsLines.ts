import type { RadialsPicture } from "../../../../engine/index.ts";
import type { Line } from "../chart/LineChart.tsx";
import { readLine } from "../chart/readLine.ts";
import type { Lengths } from "../useLengths.ts";
import { heightName } from "./layingText.ts";

/** Gain against wire, a line for each height, with the knees. */
export function radialsLines({ heights }: RadialsPicture, lengths: Lengths) {
  const places_m = [...new Set(heights.flatMap((one) => one.curve.map((point) => point.wire_m)))].sort((a, b) => a - b);
  const lines = heights.map(
    (one, i): Line => ({
      id: `${one.height_m}`,
      name: heightName(one.height_m, lengths),
      role: i === 0 ? "live" : "pin",
      style: Math.max(0, i - 1),
      y: places_m.map((m) =>
        readLine(
          one.curve.map((point) => point.wire_m),
          one.curve.map((point) => point.best.forward_dBi),
          m,
        ),
      ),
    }),
  );
  const places = heights.flatMap((one) =>
    one.knee_m === null
      ? []
      : [
          {
            id: `${one.height_m}`,
            at: one.knee_m * lengths.perMetre,
            text: `knee, ${heightName(one.height_m, lengths)}`,
          },
        ],
  );
  return { x: places_m.map((m) => m * lengths.perMetre), lines, places };
}
