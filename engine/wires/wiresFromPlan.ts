import { C0_mPerS } from "../constants.ts";
import type { ElementPlan, Plan, PortInput, RadialScreen, WireInput, WireProblem } from "../contract.ts";
import { failed, ok, type Problem, type Result } from "../result.ts";
import { SHORTEST_SEGMENT_RADII } from "./segmentCounts.ts";

/**
 * Segments per wavelength of an upright in the soil preview. A third fewer than elsewhere: the impedance moves by 0.1 ohm,
 * far inside what the preview itself is off by, and a drag costs half.
 */
const PREVIEW_SEGMENTS_PER_WAVELENGTH = 160;

/** Conductivity [S/m]: annealed copper 5.8e7 (IACS), a usual aluminium alloy 3.5e7. */
const CONDUCTIVITY_SPerM = { copper: 5.8e7, aluminium: 3.5e7, perfect: undefined } as const;

const previewSegments = (element: ElementPlan, frequency_MHz: number): number => {
  const wavelength_m = C0_mPerS / (frequency_MHz * 1e6);
  const wanted = Math.max(12, Math.ceil((PREVIEW_SEGMENTS_PER_WAVELENGTH * element.height_m) / wavelength_m));
  const most = Math.floor(element.height_m / (SHORTEST_SEGMENT_RADII * (element.diameter_mm / 2000)));
  return Math.max(2, Math.min(wanted, most));
};

const termination = (element: ElementPlan): PortInput["termination"] => {
  switch (element.base.kind) {
    case "fed": {
      const current = element.base.current;
      if (!current) return { kind: "voltage", volts: { re: 1, im: 0 } };
      const phase = (current.phase_deg * Math.PI) / 180;
      return {
        kind: "current",
        amperes: { re: current.magnitude * Math.cos(phase), im: current.magnitude * Math.sin(phase) },
      };
    }
    case "joined":
      return { kind: "short" };
    case "loaded":
      return { kind: "load", impedance_ohm: { re: element.base.resistance_ohm, im: element.base.reactance_ohm } };
    case "open":
      return { kind: "open" };
  }
};

/**
 * A checked plan as wires and ports, one port per element at its base, in plan order.
 *
 * Over soil ("screen") and perfect ground a base on the ground is joined to it, and radials lying on or buried in soil
 * become screens. In free space, and raised over perfect ground, radials are wires at the height of the base, turned
 * half a step so that none points along the beam.
 */
export function wiresFromPlan(plan: Plan): Result<WireProblem> {
  const problems: Problem[] = [];
  const wires: WireInput[] = [];
  const ports: PortInput[] = [];
  const screens: RadialScreen[] = [];
  plan.elements.forEach((element, i) => {
    const { radials, forward_m: x, left_m: y } = element;
    const meshed = plan.ground.kind === "free-space" || radials.height_m > 0;
    const base = meshed ? radials.height_m : 0;
    if (meshed && plan.ground.kind === "soil")
      problems.push({
        code: "raised-needs-full-wave",
        where: `elements[${i}].radials.height_m`,
        message: `Radials raised to ${radials.height_m} m over soil need the full-wave soil model; the preview takes 0 m or below.`,
      });
    if (meshed && radials.count === 0)
      problems.push({
        code: "base-without-radials",
        where: `elements[${i}].radials.count`,
        message: "0 radials: with nothing to stand on, the base needs at least 1 radial to be fed against.",
      });
    const sigma = CONDUCTIVITY_SPerM[element.conductor];
    const metal = sigma === undefined ? {} : { conductivity_SPerM: sigma };
    wires.push({
      id: element.id,
      from_m: [x, y, base],
      to_m: [x, y, base + element.height_m],
      radius_m: element.diameter_mm / 2000,
      ...(plan.ground.kind === "soil" && !meshed && { segments: previewSegments(element, plan.frequency_MHz) }),
      ...metal,
    });
    ports.push({ id: element.id, wire: element.id, position: 0, termination: termination(element) });
    if (meshed) {
      const copper = sigma === undefined ? {} : { conductivity_SPerM: CONDUCTIVITY_SPerM.copper };
      for (let r = 0; r < radials.count; r++) {
        const angle = (2 * Math.PI * (r + 0.5)) / radials.count;
        wires.push({
          id: `${element.id} radial ${r + 1}`,
          from_m: [x, y, base],
          to_m: [x + radials.length_m * Math.cos(angle), y + radials.length_m * Math.sin(angle), base],
          radius_m: radials.diameter_mm / 2000,
          ...copper,
        });
      }
    } else if (plan.ground.kind === "soil")
      screens.push({
        x_m: x,
        y_m: y,
        count: radials.count,
        length_m: radials.length_m,
        radius_m: radials.diameter_mm / 2000,
      });
  });
  if (problems.length > 0) return failed(...problems);
  return ok({
    frequency_Hz: plan.frequency_MHz * 1e6,
    ground: plan.ground,
    soilModel: plan.soilModel,
    screens,
    wires,
    ports,
  });
}
