import { writeFileSync } from "node:fs";
import { type ElementPlan, type Plan, type PlanSolution, soils, solvePlan, wavelength_m } from "../../engine/index.ts";

/**
 * `npm run measure` solves a grid of verticals and pairs by the preview and by the full-wave model and writes what the
 * preview is off by to engine/screen/previewErrors.json; some twenty minutes. The page reads its expected error there.
 */
const grid = {
  frequency_MHz: [3.6, 7.1, 14.2, 28.4],
  count: [2, 4, 8, 16, 32, 64, 120],
  length_wl: [1 / 16, 1 / 8, 1 / 4, 1 / 2],
  /** 0: on the soil (axis 5 mm up). */
  height_m: [0, -0.05],
  soil: ["very-good", "good", "average", "poor", "very-dry"],
};
const elevation_deg = 5;
/** Pairs with more wire in each field than this [wavelengths] take a minute each, and there the preview is at its best. */
const mostWire_wl = 16;

const known = soils.map((soil) => soil.id);

function planOf(
  soil: string,
  frequency_MHz: number,
  height_m: number,
  count: number,
  length_wl: number,
  pair: boolean,
): Plan {
  const wavelength = wavelength_m(frequency_MHz);
  const { relativePermittivity, conductivity_SPerM } = soils.find((one) => one.id === soil)!;
  const element = (id: string, forward_wl: number, height_wl: number): ElementPlan => ({
    id,
    forward_m: forward_wl * wavelength,
    left_m: 0,
    height_m: height_wl * wavelength,
    diameter_mm: 4,
    conductor: "copper",
    base: id === "driven" ? { kind: "fed" } : { kind: "joined" },
    radials: { count, length_m: length_wl * wavelength, diameter_mm: 1.6, height_m },
  });
  return {
    format: "hindwire-plan",
    version: 1,
    title: "grid",
    frequency_MHz,
    ground: { kind: "soil", relativePermittivity, conductivity_SPerM },
    soilModel: "full-wave",
    elements: pair ? [element("driven", 0, 0.242), element("reflector", -0.2, 0.252)] : [element("driven", 0, 0.242)],
  };
}

const tenths = (v: number) => Math.round(10 * v) / 10;
const hundredths = (v: number) => Math.round(100 * v) / 100;

function errorsOf(plan: Plan): number[] | null {
  const full = solvePlan(plan);
  const rough = solvePlan({ ...plan, soilModel: "screen" });
  if (!full.ok || !rough.ok) return null;
  const [a, b] = [full.value, rough.value];
  const z = (s: PlanSolution) => s.feeds[0]!.impedance_ohm;
  const ahead = (s: PlanSolution) => s.gain_dBi(elevation_deg, 0);
  const ratio = (s: PlanSolution) => ahead(s) - s.gain_dBi(elevation_deg, 180);
  const found = [tenths(z(b).re - z(a).re), tenths(z(b).im - z(a).im), hundredths(ahead(b) - ahead(a))];
  return plan.elements.length > 1 ? [...found, hundredths(ratio(b) - ratio(a))] : found;
}

for (const soil of grid.soil)
  if (!known.includes(soil as never)) throw new RangeError(`no soil "${soil}" among ${known.join()}`);
const single: (number[] | null)[] = [];
const pair: (number[] | null)[] = [];
const begun = Date.now();
for (const soil of grid.soil)
  for (const f of grid.frequency_MHz)
    for (const h of grid.height_m) {
      for (const n of grid.count)
        for (const l of grid.length_wl) {
          single.push(errorsOf(planOf(soil, f, h, n, l, false)));
          pair.push(n * l <= mostWire_wl ? errorsOf(planOf(soil, f, h, n, l, true)) : null);
        }
      console.log(`${soil} ${f} MHz ${h} m: ${Math.round((Date.now() - begun) / 1000)} s`);
    }
const soilsOf = grid.soil.map((id) => {
  const { relativePermittivity, conductivity_SPerM } = soils.find((one) => one.id === id)!;
  return [relativePermittivity, conductivity_SPerM];
});
// One place a line, so that a new measurement can be read as a difference.
const list = (rows: readonly (number[] | null)[]) =>
  `[\n${rows.map((row) => `    ${JSON.stringify(row)}`).join(",\n")}\n  ]`;
writeFileSync(
  "engine/screen/previewErrors.json",
  `{
  "about": "Preview minus full-wave, by soil, frequency, height, count, length, the last fastest: [R ohm, X ohm, gain at 5 degrees dB] and for pairs also front-to-back dB. Computed by npm run measure.",
  "soil": ${JSON.stringify(soilsOf)},
  "frequency_MHz": ${JSON.stringify(grid.frequency_MHz)},
  "height_m": ${JSON.stringify(grid.height_m)},
  "count": ${JSON.stringify(grid.count)},
  "length_wl": ${JSON.stringify(grid.length_wl)},
  "single": ${list(single)},
  "pair": ${list(pair)}
}
`,
);
