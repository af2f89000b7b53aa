import { segmentCurrents } from "../../basis/segmentCurrents.ts";
import { ETA0_ohm } from "../../constants.ts";
import type { Plan, WireProblem } from "../../contract.ts";
import { farGround } from "../../fields/farGround.ts";
import { makeFarField } from "../../fields/makeFarField.ts";
import { invert } from "../../linalg/invert.ts";
import { checkPlan } from "../../plan/checkPlan.ts";
import { failed, type Note, ok, type Result } from "../../result.ts";
import { combineStates } from "../../solve/combineStates.ts";
import { isScreened } from "../../solve/isScreened.ts";
import { meshNotes } from "../../solve/meshNotes.ts";
import { type PortStates, portStates } from "../../solve/portStates.ts";
import { screenStates } from "../../solve/screenStates.ts";
import { checkWires } from "../../wires/checkWires.ts";
import { wiresFromPlan } from "../../wires/wiresFromPlan.ts";
import type { TrialAsk } from "./Trial.ts";

/** Directions in which a sample's fields are kept: every elevation at every azimuth, and some elevations ahead alone. */
export interface Directions {
  readonly elevations_deg: readonly number[];
  /** 0 ahead, counter-clockwise. */
  readonly azimuths_deg: readonly number[];
  /** Elevations looked at straight ahead only, azimuth 0; they come last. Absent: none. */
  readonly ahead_deg?: readonly number[];
}

/** One solve of all wires with every base as a port, free of what is connected to the bases. Plain data. */
export interface ArraySample {
  readonly frequency_MHz: number;
  /** Open-circuit impedance matrix over all elements, row-major, re and im: 2·P·P. */
  readonly impedance_ohm: readonly number[];
  /**
   * Far field for 1 A into one base, the others open: [port][direction][θre, θim, φre, φim], flat, directions in the order
   * [elevation][azimuth], then those ahead alone (`fieldPlace`), seen from the plan's origin [√ohm]. The square of what
   * base currents make of it, over the resistance that takes their power, is the gain.
   */
  readonly fields: readonly number[];
  readonly notes: readonly Note[];
}

/**
 * One solve of a plan's wires with every base as a port: the open-circuit impedance matrix, and the far field of 1 A in
 * each base with the others open, F √(4π/η₀) per ampere [√ohm]. What is fed, joined, loaded or open follows by algebra
 * (`arrayFigures`), equal to a solve of the plan itself to rounding. In any soil model, over perfect ground, in free
 * space. The wires are cut as they are at the plan's own frequency (see `bandSample`).
 *
 * Problems: those of the plan, of its wires, and a direction under the horizon of a ground.
 */
export function arraySample({
  plan: candidate,
  frequency_MHz,
  directions,
  uprightSegments,
}: TrialAsk): Result<ArraySample> {
  const plan = checkPlan({ ...candidate, frequency_MHz });
  if (!plan.ok) return plan;
  const laid = wiresFromPlan(plan.value, candidate.frequency_MHz);
  if (!laid.ok) return laid;
  const problem = cut(laid.value.problem, plan.value, uprightSegments);
  const problems = checkWires(problem);
  if (problems.length > 0) return failed(...problems);

  const states = portStates(problem, problem.wires, problem.ports);
  const { impedance, opened, notes } = freed(problem, states);
  // What is in series with a base leaves the currents of an open network as they are.
  problem.ports.forEach(({ series_ohm }, i) => {
    impedance[2 * i * (states.ports + 1)]! += series_ohm?.re ?? 0;
    impedance[2 * i * (states.ports + 1) + 1]! += series_ohm?.im ?? 0;
  });
  return ok({
    frequency_MHz,
    impedance_ohm: Array.from(impedance),
    fields: fieldsOf(problem, states, opened, directions),
    notes: [...laid.value.notes, ...notes, ...meshNotes(problem.wires, states)],
  });
}

/** The problem with its uprights cut as asked. @throws RangeError when that is not one number an element */
function cut(problem: WireProblem, { elements }: Plan, uprightSegments: readonly number[] | undefined): WireProblem {
  if (!uprightSegments) return problem;
  if (uprightSegments.length !== elements.length)
    throw new RangeError(`arraySample: segments of ${uprightSegments.length} uprights for ${elements.length} elements`);
  const wires = problem.wires.map((wire) => {
    const upright = elements.findIndex(({ id }) => id === wire.id);
    return upright < 0 ? wire : { ...wire, segments: uprightSegments[upright]! };
  });
  return { ...problem, wires };
}

/** Z [ohm], and P columns of coefficients for 1 A into one base, the others open. */
function freed(
  problem: WireProblem,
  states: PortStates,
): { impedance: Float64Array; opened: Float64Array; notes: readonly Note[] } {
  const { ports: P, basis } = states;
  if (isScreened(problem)) {
    const { admittance, opened, notes } = screenStates(problem, states);
    return { impedance: invert(admittance, P), opened, notes };
  }
  const impedance = invert(states.admittance, P);
  const opened = new Float64Array(2 * basis.count * P);
  const column = new Float64Array(2 * P);
  for (let p = 0; p < P; p++) {
    for (let i = 0; i < P; i++) {
      column[2 * i] = impedance[2 * (i * P + p)]!;
      column[2 * i + 1] = impedance[2 * (i * P + p) + 1]!;
    }
    opened.set(combineStates(states.shorted, column, basis.count), 2 * basis.count * p);
  }
  return { impedance, opened, notes: [] };
}

function fieldsOf(
  problem: WireProblem,
  { segments, basis, k, ports: P }: PortStates,
  opened: Float64Array,
  { elevations_deg, azimuths_deg, ahead_deg = [] }: Directions,
): number[] {
  const scale = Math.sqrt((4 * Math.PI) / ETA0_ohm);
  const ground = farGround(problem);
  const field = new Float64Array(4);
  const out: number[] = [];
  for (let p = 0; p < P; p++) {
    const currents = segmentCurrents(segments, basis, opened.subarray(2 * basis.count * p, 2 * basis.count * (p + 1)));
    const far = makeFarField(segments, currents, k, ground);
    const look = (elevation_deg: number, azimuth_deg: number) => {
      far.field(field, (elevation_deg * Math.PI) / 180, (azimuth_deg * Math.PI) / 180);
      out.push(scale * field[0]!, scale * field[1]!, scale * field[2]!, scale * field[3]!);
    };
    for (const elevation_deg of elevations_deg)
      for (const azimuth_deg of azimuths_deg) look(elevation_deg, azimuth_deg);
    for (const elevation_deg of ahead_deg) look(elevation_deg, 0);
  }
  return out;
}
