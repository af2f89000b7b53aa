import type { ElementPlan, Plan, SavedPlan } from "../../engine/index.ts";

const radials = { count: 16, length_m: 5, diameter_mm: 1.6, height_m: 0 } as const;
const driven: ElementPlan = {
  id: "driven",
  forward_m: 0,
  left_m: 0,
  height_m: 10.1,
  diameter_mm: 2,
  conductor: "copper",
  base: { kind: "fed" },
  radials,
};
const reflector: ElementPlan = {
  ...driven,
  id: "reflector",
  forward_m: -8.4,
  height_m: 10.65,
  base: { kind: "joined" },
};
const alone: Plan = {
  format: "hindwire-plan",
  version: 1,
  title: "One vertical",
  frequency_MHz: 7.1,
  ground: { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 },
  soilModel: "screen",
  elements: [driven],
};

/** What the page holds until `start` gives it the person's own work. */
export const startingPlan: SavedPlan = {
  ...alone,
  title: "Vertical with a wire behind it",
  elements: [driven, reflector],
  site: { heading_deg: 62, ituRegion: 1 },
  band: { label: "40 m", from_MHz: 7, to_MHz: 7.2 },
  interest: { elevation_deg: 8, rearSector_deg: 120, azimuthCutElevation_deg: 8 },
  pins: [{ id: "pin-1", name: "one vertical", plan: alone }],
  baseline: "pin-1",
};
