import type { ElementPlan, Plan, PortInput, RadialScreen, WireInput, WireProblem } from "../contract.ts";
import { failed, type Note, ok, type Result } from "../result.ts";
import { footing } from "./footing.ts";
import { type LaidWire, layRadials } from "./layRadials.ts";
import { modelObstacles } from "./modelObstacles.ts";
import { joiningSegments, radialSegments, uprightSegments } from "./planSegments.ts";
import { radialHeights } from "./radialHeights.ts";

/** Conductivity [S/m]: annealed copper 5.8e7 (IACS), a usual aluminium alloy 3.5e7. */
const CONDUCTIVITY_SPerM = { copper: 5.8e7, aluminium: 3.5e7, perfect: undefined } as const;

/** A lead of some centimetres from the surface to buried radials. */
const LEAD_SEGMENTS = 3;

export interface PlanWires {
  readonly problem: WireProblem;
  /** The radials and what joins them … */
  readonly laid: readonly LaidWire[];
  /** … as wires of the problem from this index on. */
  readonly firstLaid: number;
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
  const soil = plan.ground.kind === "soil";
  const hubs = radialHeights(plan);
  plan.elements.forEach((element, i) => {
    const { radials, forward_m: x, left_m: y } = element;
    const foot = footing(plan, element);
    const hub = foot === "wires" ? hubs.height_m[i]! : 0;
    // Over buried radials the base stays at the surface, with a lead down to their hub.
    const base = Math.max(0, hub);
    const radius_m = element.diameter_mm / 2000;
    const sigma = CONDUCTIVITY_SPerM[element.conductor];
    wires.push({
      id: element.id,
      from_m: [x, y, base],
      to_m: [x, y, base + element.height_m],
      radius_m,
      ...(soil && { segments: uprightSegments(element.height_m, radius_m, mesh_MHz, plan.soilModel) }),
      ...(sigma !== undefined && { conductivity_SPerM: sigma }),
    });
    const series = element.baseSeries;
    ports.push({
      id: element.id,
      wire: element.id,
      position: 0,
      termination: termination(element),
      ...(series && { series_ohm: { re: series.resistance_ohm, im: series.reactance_ohm } }),
    });
    if (foot === "screen")
      screens.push({
        x_m: x,
        y_m: y,
        count: radials.count,
        length_m: radials.length_m,
        radius_m: radials.diameter_mm / 2000,
      });
    if (foot !== "wires") return;
    if (hub < 0)
      wires.push({
        id: `${element.id} lead`,
        from_m: [x, y, 0],
        to_m: [x, y, hub],
        segments: LEAD_SEGMENTS,
        ...radialWire(element),
      });
    if (soil && element.stake)
      wires.push({
        id: `${element.id} stake`,
        from_m: [x, y, hub],
        to_m: [x, y, -element.stake.length_m],
        radius_m: element.stake.diameter_mm / 2000,
        ...(sigma !== undefined && { conductivity_SPerM: CONDUCTIVITY_SPerM.copper }),
      });
    if (hubs.lifted.includes(i))
      notes.push({
        code: "radials-lifted",
        message: `The radials of "${element.id}" cross another element's; they are taken to lie at ${(1000 * hub).toFixed(0)} mm, insulated from them.`,
        measured: hub,
      });
  });

  const laid = layRadials(
    plan,
    plan.elements.map((element, i) => (footing(plan, element) === "wires" ? hubs.height_m[i] : undefined)),
  );
  const firstLaid = wires.length;
  const counted = new Map<string, number>();
  for (const { kind, element: i, from_m, to_m } of laid) {
    const element = plan.elements[i]!;
    const number = (counted.get(`${i} ${kind}`) ?? 0) + 1;
    counted.set(`${i} ${kind}`, number);
    const length_m = Math.hypot(to_m[0] - from_m[0], to_m[1] - from_m[1], to_m[2] - from_m[2]);
    const wire = radialWire(element);
    wires.push({
      id: `${element.id} ${kind} ${number}`,
      from_m,
      to_m,
      ...wire,
      ...(soil && {
        segments:
          kind === "radial"
            ? radialSegments(length_m, wire.radius_m, mesh_MHz, element.radials.count)
            : joiningSegments(length_m, wire.radius_m, mesh_MHz),
      }),
    });
  }
  return ok({
    problem: {
      frequency_Hz: plan.frequency_MHz * 1e6,
      ground: plan.ground,
      soilModel: plan.soilModel,
      screens,
      wires,
      ports,
    },
    laid,
    firstLaid,
    notes,
  });
}

/** What the wires of an element's radial field are made of; bare copper unless the plan says otherwise. */
function radialWire({
  conductor,
  radials,
}: ElementPlan): Pick<WireInput, "radius_m" | "conductivity_SPerM" | "insulation"> {
  const { insulation } = radials;
  return {
    radius_m: radials.diameter_mm / 2000,
    ...(conductor !== "perfect" && { conductivity_SPerM: CONDUCTIVITY_SPerM.copper }),
    ...(insulation && {
      insulation: {
        radius_m: insulation.diameter_mm / 2000,
        relativePermittivity: insulation.relativePermittivity,
      },
    }),
  };
}
