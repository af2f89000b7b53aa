import type { ElementPlan, Plan, PortInput, RadialScreen, WireInput, WireProblem } from "../contract.ts";
import { failed, type Note, ok, type Result } from "../result.ts";
import { footing } from "./footing.ts";
import { modelObstacles } from "./modelObstacles.ts";
import { radialSegments, uprightSegments } from "./planSegments.ts";
import { radialDirections } from "./radialDirections.ts";
import { radialHeights } from "./radialHeights.ts";

/** Conductivity [S/m]: annealed copper 5.8e7 (IACS), a usual aluminium alloy 3.5e7. */
const CONDUCTIVITY_SPerM = { copper: 5.8e7, aluminium: 3.5e7, perfect: undefined } as const;

/** A lead of some centimetres from the surface to buried radials. */
const LEAD_SEGMENTS = 3;

export interface PlanWires {
  readonly problem: WireProblem;
  readonly notes: readonly Note[];
}

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
 * In the soil preview radials become screens. Over perfect ground a base on the ground is joined to it. Else radials are
 * wires at the height of the base; lying on soil their axes are 5 mm up, and buried ones join the base at the surface by a
 * lead. Where the fields of two elements cross at one height, the later one's is laid 5 mm above (in soil 2 cm below) and
 * a note says so.
 *
 * @param mesh_MHz the frequency whose wavelength the wires are cut by: one for a whole sweep, or its curve would step
 *   wherever the number of segments does
 */
export function wiresFromPlan(plan: Plan, mesh_MHz = plan.frequency_MHz): Result<PlanWires> {
  const problems = modelObstacles(plan);
  if (problems.length > 0) return failed(...problems);

  const wires: WireInput[] = [];
  const ports: PortInput[] = [];
  const screens: RadialScreen[] = [];
  const notes: Note[] = [];
  const laid = radialHeights(plan.elements);
  plan.elements.forEach((element, i) => {
    const { radials, forward_m: x, left_m: y } = element;
    const foot = footing(plan, element);
    const hub = foot === "wires" ? laid.height_m[i]! : 0;
    // Over buried radials the base stays at the surface, with a lead down to their hub.
    const base = Math.max(0, hub);
    const radius_m = element.diameter_mm / 2000;
    const radialRadius_m = radials.diameter_mm / 2000;
    const sigma = CONDUCTIVITY_SPerM[element.conductor];
    const soil = plan.ground.kind === "soil";
    wires.push({
      id: element.id,
      from_m: [x, y, base],
      to_m: [x, y, base + element.height_m],
      radius_m,
      ...(soil && { segments: uprightSegments(element.height_m, radius_m, mesh_MHz, plan.soilModel) }),
      ...(sigma !== undefined && { conductivity_SPerM: sigma }),
    });
    ports.push({ id: element.id, wire: element.id, position: 0, termination: termination(element) });
    if (foot === "screen")
      screens.push({ x_m: x, y_m: y, count: radials.count, length_m: radials.length_m, radius_m: radialRadius_m });
    if (foot !== "wires") return;
    if (hub < 0)
      wires.push({
        id: `${element.id} lead`,
        from_m: [x, y, 0],
        to_m: [x, y, hub],
        radius_m: radialRadius_m,
        segments: LEAD_SEGMENTS,
        ...(sigma !== undefined && { conductivity_SPerM: CONDUCTIVITY_SPerM.copper }),
      });
    radialDirections(radials.count).forEach((angle, r) => {
      wires.push({
        id: `${element.id} radial ${r + 1}`,
        from_m: [x, y, hub],
        to_m: [x + radials.length_m * Math.cos(angle), y + radials.length_m * Math.sin(angle), hub],
        radius_m: radialRadius_m,
        ...(soil && {
          segments: radialSegments(radials.length_m, radialRadius_m, mesh_MHz, radials.count),
        }),
        ...(sigma !== undefined && { conductivity_SPerM: CONDUCTIVITY_SPerM.copper }),
      });
    });
    if (laid.lifted.includes(i))
      notes.push({
        code: "radials-lifted",
        message: `The radials of "${element.id}" cross another element's; they are taken to lie at ${(1000 * hub).toFixed(0)} mm, insulated from them.`,
        measured: hub,
      });
  });
  return ok({
    problem: {
      frequency_Hz: plan.frequency_MHz * 1e6,
      ground: plan.ground,
      soilModel: plan.soilModel,
      screens,
      wires,
      ports,
    },
    notes,
  });
}
