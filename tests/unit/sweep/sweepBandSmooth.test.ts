import { describe, expect, test } from "vitest";
import { feedsAt, type Plan, readPlan, sweepBand, sweepBandSmooth } from "../../../engine/index.ts";
import { okValue } from "../../support/okValue.ts";

const pair = (frequency_MHz: number, count: number, scale: number, ground: Plan["ground"]): Plan => ({
  format: "hindwire-plan",
  version: 1,
  title: "pair",
  frequency_MHz,
  ground,
  soilModel: "full-wave",
  elements: [0, 1].map((i) => ({
    id: i === 0 ? "driven" : "reflector",
    forward_m: i === 0 ? 0 : -5.9 * scale,
    left_m: 0,
    height_m: (i === 0 ? 7.25 : 7.6) * scale,
    diameter_mm: 1.6,
    conductor: "copper",
    base: { kind: i === 0 ? "fed" : "joined" },
    radials: { count, length_m: 3.7 * scale, height_m: 0, diameter_mm: 1.6 },
  })),
});
const average = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;

/** Largest distance between the smooth sweep's curve and direct solves between its points. */
function away_ohm(plan: Plan, from_MHz: number, to_MHz: number) {
  const band = okValue(sweepBandSmooth(plan, { from_MHz, to_MHz, points: 10 }));
  const solved = okValue(sweepBand(plan, { from_MHz, to_MHz, points: 10 }));
  let most = 0;
  for (let i = 0; i < 10; i++)
    most = Math.max(
      most,
      Math.hypot(
        band.feeds[0]!.resistance_ohm[i]! - solved.feeds[0]!.resistance_ohm[i]!,
        band.feeds[0]!.reactance_ohm[i]! - solved.feeds[0]!.reactance_ohm[i]!,
      ),
    );
  return { most, ...band.interpolated! };
}

describe("sweepBandSmooth", { timeout: 120_000 }, () => {
  test.each([
    ["a narrow band over soil", pair(10.12, 6, 1, average), 10.09, 10.16],
    ["a wide band over soil", pair(3.65, 6, 2.77, average), 3.4, 4.0],
    ["a wide band over perfect ground", pair(3.65, 6, 2.77, { kind: "perfect" }), 3.4, 4.0],
    ["an octave over perfect ground", pair(10.12, 6, 1, { kind: "perfect" }), 7, 14],
  ])("%s: direct solves between the points lie within the error it states", (_, plan, from, to) => {
    const { most, error_ohm, solved_MHz } = away_ohm(plan, from, to);
    expect(most).toBeLessThanOrEqual(error_ohm);
  });
});
