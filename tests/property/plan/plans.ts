import * as fc from "fast-check";
import { type ElementPlan, type Plan, type SavedPlan, wavelength_m } from "../../../engine/index.ts";

/** Both ends included; made from a whole number, which draws many times faster than a double of any bits. */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 2 ** 30 }).map((step) => min + (max - min) * (step / 2 ** 30));
/** Any text, halves of surrogate pairs and control characters included. */
const anyText = (maxLength: number) =>
  fc.string({ unit: fc.nat(0xffff).map((code) => String.fromCharCode(code)), maxLength });

/** What a newer page may have put in: any JSON, under names that no field of a plan has. */
const extras = fc.dictionary(
  fc.string({ maxLength: 8 }).map((name) => `x${name}`),
  fc.jsonValue({ maxDepth: 3 }),
  { maxKeys: 2 },
);

const bases = fc.oneof(
  fc.constant<ElementPlan["base"]>({ kind: "fed" }),
  fc.record({
    kind: fc.constant("fed" as const),
    current: fc.record({ magnitude: between(0.01, 10), phase_deg: between(-360, 360) }),
  }),
  fc.constant<ElementPlan["base"]>({ kind: "joined" }),
  fc.constant<ElementPlan["base"]>({ kind: "open" }),
  fc.record({
    kind: fc.constant("loaded" as const),
    resistance_ohm: between(0, 500),
    reactance_ohm: between(-500, 500),
  }),
);

/** Elements well inside the limits at their wavelength, standing at least a twentieth of it apart. */
function elementsAt(wavelength: number) {
  const element = fc.record({
    forward_m: between(-0.02 * wavelength, 0.02 * wavelength),
    left_m: between(-wavelength, wavelength),
    height_m: between(0.1 * wavelength, Math.min(0.6 * wavelength, 160)),
    diameter_mm: between(1e-5 * wavelength * 1000, 0.005 * wavelength * 1000),
    conductor: fc.constantFrom("copper" as const, "aluminium" as const, "perfect" as const),
    base: bases,
    radials: fc
      .record({
        count: fc.integer({ min: 0, max: 120 }),
        length_m: between(0.05 * wavelength, Math.min(0.5 * wavelength, 160)),
        diameter_mm: between(1e-5 * wavelength * 1000, 0.003 * wavelength * 1000),
        height_m: between(-0.3, 0),
        insulated: fc.boolean(),
        outer: between(1.1, 3),
        relativePermittivity: between(1, 10),
      })
      .map(({ insulated, outer, relativePermittivity, ...radials }) => {
        const diameter_mm = Math.min(radials.diameter_mm * outer, 100);
        return insulated && diameter_mm > radials.diameter_mm
          ? { ...radials, insulation: { diameter_mm, relativePermittivity } }
          : radials;
      }),
  });
  return fc.array(element, { minLength: 1, maxLength: 4 }).map((made) =>
    made.map((each, index): ElementPlan => {
      const forward_m = each.forward_m - index * 0.1 * wavelength;
      // The first one is fed, whatever was drawn: a plan needs it.
      const base = index === 0 && each.base.kind !== "fed" ? { kind: "fed" as const } : each.base;
      return { id: `e${index}`, ...each, forward_m, base };
    }),
  );
}

const grounds = fc.oneof(
  fc.constant({ kind: "free-space" as const }),
  fc.constant({ kind: "perfect" as const }),
  fc.record({
    kind: fc.constant("soil" as const),
    relativePermittivity: between(1, 100),
    conductivity_SPerM: between(0, 10),
  }),
);

/** Plans that must pass `checkPlan`. */
export const goodPlans: fc.Arbitrary<Plan> = between(1.2, 50).chain((frequency_MHz) =>
  fc.record({
    format: fc.constant("hindwire-plan" as const),
    version: fc.constant(1 as const),
    title: anyText(30),
    frequency_MHz: fc.constant(frequency_MHz),
    ground: grounds,
    soilModel: fc.constantFrom("screen" as const, "full-wave" as const),
    elements: elementsAt(wavelength_m(frequency_MHz)),
  }),
);

/** Plans with any of the optional parts and with fields unknown here, that must pass `checkSavedPlan`. */
export const goodSavedPlans: fc.Arbitrary<SavedPlan> = fc
  .record(
    {
      plan: goodPlans,
      more: extras,
      site: fc.record({ heading_deg: between(0, 360), ituRegion: fc.constantFrom(1 as const, 2 as const, 3 as const) }),
      band: fc.record({ label: anyText(10), from_MHz: between(1, 30), to_MHz: between(31, 60) }),
      interest: fc.record({
        elevation_deg: between(0.5, 90),
        rearSector_deg: between(0, 360),
        azimuthCutElevation_deg: between(0.5, 90),
      }),
      pins: fc
        .array(fc.record({ name: anyText(10), plan: goodPlans }), { maxLength: 4 })
        .map((pins) => pins.map((pin, index) => ({ id: `pin-${index + 1}`, ...pin }))),
      remark: anyText(200),
      based: fc.boolean(),
    },
    { requiredKeys: ["plan", "more"] },
  )
  .map(({ plan, more, based, ...parts }) => {
    const first = based ? parts.pins?.[0] : undefined;
    return { ...more, ...plan, ...parts, ...(first ? { baseline: first.id } : {}) };
  });
