import type { Plan } from "../../engine/index.ts";

/** A driven and a reflector over perfect ground, lengths in wavelengths, with one resistance in series with each base. */
export function reflectorPlan(given: {
  readonly frequency_MHz: number;
  readonly driven_wl: number;
  readonly reflector_wl: number;
  readonly spacing_wl: number;
  readonly rg_ohm?: number;
  readonly diameter_mm?: number;
}): Plan {
  const { frequency_MHz, driven_wl, reflector_wl, spacing_wl, rg_ohm = 0, diameter_mm = 2 } = given;
  const wavelength = 299.792458 / frequency_MHz;
  return {
    format: "hindwire-plan",
    version: 1,
    title: "reflector",
    frequency_MHz,
    ground: { kind: "perfect" },
    soilModel: "screen",
    elements: [0, 1].map((i) => ({
      id: i === 0 ? "driven" : "reflector",
      forward_m: i === 0 ? 0 : -spacing_wl * wavelength,
      left_m: 0,
      height_m: (i === 0 ? driven_wl : reflector_wl) * wavelength,
      diameter_mm,
      conductor: "perfect",
      base: { kind: i === 0 ? "fed" : "joined" },
      baseSeries: { resistance_ohm: rg_ohm, reactance_ohm: 0 },
      radials: { count: 0, length_m: 5, height_m: 0, diameter_mm: 1.6 },
    })),
  };
}
