import type { Plan } from "../../engine/index.ts";

/** A vertical and a reflector for 10.12 MHz, for trials; invented figures. */
export function trialPair(given: {
  readonly ground: Plan["ground"];
  readonly soilModel?: Plan["soilModel"];
  readonly radials?: number;
  readonly spacing_m?: number;
  readonly driven_m?: number;
  readonly reflector_m?: number;
}): Plan {
  const { ground, soilModel = "screen", radials = 0, spacing_m = 5.9, driven_m = 7.25, reflector_m = 7.6 } = given;
  return {
    format: "hindwire-plan",
    version: 1,
    title: "pair",
    frequency_MHz: 10.12,
    ground,
    soilModel,
    elements: [0, 1].map((i) => ({
      id: i === 0 ? "driven" : "reflector",
      forward_m: i === 0 ? 0 : -spacing_m,
      left_m: 0,
      height_m: i === 0 ? driven_m : reflector_m,
      diameter_mm: 1.6,
      conductor: "copper",
      base: { kind: i === 0 ? "fed" : "joined" },
      radials: { count: radials, length_m: 3.7, height_m: 0, diameter_mm: 1.6 },
    })),
  };
}
