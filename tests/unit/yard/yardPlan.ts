import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";

export const driven: ElementPlan = {
  id: "front",
  forward_m: 0,
  left_m: 0,
  height_m: 10,
  diameter_mm: 2,
  conductor: "copper",
  base: { kind: "fed" },
  radials: { count: 16, length_m: 4, diameter_mm: 1.6, height_m: 0 },
};

export const reflector: ElementPlan = {
  ...driven,
  id: "back",
  forward_m: -8.4,
  height_m: 10.5,
  base: { kind: "joined" },
};

/** A wavelength of exactly 42 m, so that fractions of it are round figures. */
export const frequency_MHz = 299.792458 / 42;

/** Two elements that nothing can be said against. */
export function yardPlan(change: Partial<SavedPlan> = {}): SavedPlan {
  return {
    format: "hindwire-plan",
    version: 1,
    title: "Test yard",
    frequency_MHz,
    ground: { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 },
    soilModel: "screen",
    site: { heading_deg: 62, ituRegion: 1 },
    elements: [driven, reflector],
    ...change,
  };
}

/** The same with some measures of the two elements changed. */
export function withMeasures(front: Partial<ElementPlan>, back: Partial<ElementPlan> = {}): SavedPlan {
  return yardPlan({
    elements: [
      { ...driven, ...front },
      { ...reflector, ...back },
    ],
  });
}
