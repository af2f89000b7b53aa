import { segmentCurrents } from "../basis/segmentCurrents.ts";
import { ETA0_ohm } from "../constants.ts";
import type { PortInput, WireProblem } from "../contract.ts";
import type { FarField } from "../fields/FarField.ts";
import { farGround } from "../fields/farGround.ts";
import { makeFarField } from "../fields/makeFarField.ts";
import { radiatedPower } from "../fields/radiatedPower.ts";
import type { Note } from "../result.ts";
import { imagesCurrents } from "../wires/imagesCurrents.ts";
import type { Segments } from "../wires/Segments.ts";
import { auditPower } from "./auditPower.ts";
import { combineStates } from "./combineStates.ts";
import { conductorLoss } from "./conductorLoss.ts";
import { isScreened } from "./isScreened.ts";
import { meshNotes } from "./meshNotes.ts";
import { type PortStates, portStates } from "./portStates.ts";
import { screenStates } from "./screenStates.ts";
import { terminate } from "./terminate.ts";
import { insideSeries, withSeries } from "./withSeries.ts";

/** A solved problem with everything the readouts draw from. Arrays hold the asked ports first, in their order. */
export interface Terminated {
  readonly states: PortStates;
  /** 2·P [V peak] and [A peak]. */
  readonly volts: Float64Array;
  readonly amperes: Float64Array;
  /** 4·S, see segmentCurrents. */
  readonly currents: Float64Array;
  readonly far: FarField;
  readonly inputPower_W: number;
  readonly radiatedPower_W: number;
  readonly conductorLoss_W: number;
  readonly loadLoss_W: number;
  readonly notes: readonly Note[];
  gain_dBi(elevation_deg: number, azimuth_deg: number): number;
}

/** Largest horizontal distance between wires and largest height [m]. */
function extent(segments: Segments): { across: number; up: number } {
  let x0 = Number.POSITIVE_INFINITY;
  let x1 = Number.NEGATIVE_INFINITY;
  let y0 = x0;
  let y1 = x1;
  let up = 0;
  for (let s = 0; s < segments.count; s++)
    for (let end = 0; end < 2; end++) {
      const L = end * segments.length[s]!;
      const x = segments.start[3 * s]! + L * segments.tangent[3 * s]!;
      const y = segments.start[3 * s + 1]! + L * segments.tangent[3 * s + 1]!;
      const z = segments.start[3 * s + 2]! + L * segments.tangent[3 * s + 2]!;
      x0 = Math.min(x0, x);
      x1 = Math.max(x1, x);
      y0 = Math.min(y0, y);
      y1 = Math.max(y1, y);
      up = Math.max(up, Math.abs(z));
    }
  return { across: Math.sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2), up };
}

/**
 * Solves checked wires with their terminations: port network, currents, far field, powers, and the audit of powers.
 * `onPart` is told now and then which part of the work is done, 0..1. Throws nothing; a network that cannot be solved shows as values that are not finite, and the callers say so.
 */
export function solveTerminated(problem: WireProblem, onPart?: (part: number) => void): Terminated {
  const screened = isScreened(problem);
  const ports: PortInput[] = [...problem.ports];
  if (screened) ports.push(...groundContacts(problem));
  const states = portStates(problem, problem.wires, ports, onPart);
  const terminations = ports.map((p) => p.termination);
  const notes: Note[] = [];

  let volts: Float64Array;
  let amperes: Float64Array;
  let x: Float64Array;
  if (screened) {
    const preview = screenStates(problem, states);
    ({ volts, amperes } = terminate(withSeries(preview.admittance, ports), terminations));
    x = combineStates(preview.opened, amperes, states.basis.count);
    notes.push(...preview.notes);
  } else {
    ({ volts, amperes } = terminate(withSeries(states.admittance, ports), terminations));
    x = combineStates(states.shorted, insideSeries(volts, amperes, ports), states.basis.count);
    if (problem.ground.kind === "soil" && imagesCurrents(problem))
      notes.push({
        code: "no-screen",
        message:
          "No radials are described, so the currents are those over a perfect ground and no loss in the soil is counted.",
      });
  }

  const { segments, k } = states;
  const currents = segmentCurrents(segments, states.basis, x);
  const far = makeFarField(segments, currents, k, farGround(problem));
  const size = extent(segments);
  const radiatedPower_W = radiatedPower(far, problem.ground.kind !== "free-space", k * size.across, k * size.up);

  let inputPower_W = 0;
  let loadLoss_W = 0;
  terminations.forEach((t, i) => {
    const p = 0.5 * (volts[2 * i]! * amperes[2 * i]! + volts[2 * i + 1]! * amperes[2 * i + 1]!);
    if (t.kind === "voltage" || t.kind === "current") inputPower_W += p;
    // Where a load absorbs, the voltage opposes the current.
    if (t.kind === "load") loadLoss_W -= p;
    const resistance_ohm = ports[i]!.series_ohm?.re ?? 0;
    loadLoss_W += 0.5 * resistance_ohm * (amperes[2 * i]! ** 2 + amperes[2 * i + 1]! ** 2);
  });
  const conductorLoss_W = conductorLoss(segments, currents);
  notes.push(...auditPower(problem, { inputPower_W, radiatedPower_W, conductorLoss_W, loadLoss_W }));

  notes.push(...meshNotes(problem.wires, states));
  if (!(states.residual < 1e-10))
    notes.push({
      code: "residual",
      message: `The linear equations are left with a residual of ${states.residual.toExponential(1)}.`,
      measured: states.residual,
    });

  const toGain = (4 * Math.PI) / (2 * ETA0_ohm * inputPower_W);
  return {
    states,
    volts,
    amperes,
    currents,
    far,
    inputPower_W,
    radiatedPower_W,
    conductorLoss_W,
    loadLoss_W,
    notes,
    gain_dBi(elevation_deg, azimuth_deg) {
      const U = far.intensity((elevation_deg * Math.PI) / 180, (azimuth_deg * Math.PI) / 180);
      return U === 0 ? Number.NEGATIVE_INFINITY : 10 * Math.log10(toGain * U);
    },
  };
}

/** A shorted gap at every wire end that stands on the ground and has no port: the soil acts on its current too. */
function groundContacts(problem: WireProblem): PortInput[] {
  const out: PortInput[] = [];
  for (const wire of problem.wires)
    for (const [position, end] of [
      [0, wire.from_m],
      [1, wire.to_m],
    ] as const) {
      const taken = problem.ports.some((p) => p.wire === wire.id && p.position === position);
      if (Math.abs(end[2]) <= 1e-6 && !taken)
        out.push({ id: `${wire.id}@${position}`, wire: wire.id, position, termination: { kind: "short" } });
    }
  return out;
}
