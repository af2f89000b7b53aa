import type { Plan } from "../contract.ts";
import { scalarPotential } from "../fields/scalarPotential.ts";
import { surroundings } from "../kernel/surroundings.ts";
import { ok, type Result } from "../result.ts";
import { reach } from "../solve/reach.ts";
import { solvePlanProblem } from "../solve/solvePlanProblem.ts";

/** Voltages at one element over the current of the first fed base [V/A]: both rms, or both peak. */
export interface EndVoltages {
  readonly elementId: string;
  /** Across the gap at the base: what a load drops, what an open base stands off. */
  readonly base_VPerA: number;
  /** Of the tip against far-off ground. */
  readonly tip_VPerA: number;
  /** Of the radial end that is highest; absent where radials are not wires (preview, perfect ground). */
  readonly radialEnd_VPerA?: number;
}

/**
 * What the ends of a plan's wires stand at: scalar potentials of their last segments (see `scalarPotential`). They carry the
 * highest voltages of the array; a potential says how hard the air and the insulators there are pressed, as the rule
 * V = I·60(ln 2h/a − 1) for a quarter wave does, within a twentieth of it.
 *
 * Of the radials only the end with the most charge near it is looked at. Accuracy: that of the currents; over a perfect
 * plane it agrees with the base's voltage less jω∫A ds to 1e-4.
 *
 * Problems: those of the plan.
 */
export function endVoltages(candidate: Plan): Result<readonly EndVoltages[]> {
  const result = solvePlanProblem(candidate);
  if (!result.ok) return result;
  const { plan, laid, solved } = result.value;
  const { problem } = laid;
  const { segments } = solved.states;
  const { kernel } = surroundings(problem, reach(segments));
  const first = plan.elements.findIndex((element) => element.base.kind === "fed");
  const amperes = size(solved.amperes[2 * first]!, solved.amperes[2 * first + 1]!);
  const perAmpere = (wire: number) => {
    const last = segments.firstOfWire[wire + 1]! - 1;
    const { re, im } = scalarPotential(segments, solved.currents, kernel, problem.frequency_Hz, last);
    return size(re, im) / amperes;
  };
  /** Charge of a wire's last segment for each metre of it, times ω. */
  const charge = (wire: number) => {
    const last = segments.firstOfWire[wire + 1]! - 1;
    return size(solved.currents[4 * last]!, solved.currents[4 * last + 1]!) / segments.length[last]!;
  };
  return ok(
    plan.elements.map(({ id }, i) => {
      const ends = laid.laid.flatMap(({ kind, element }, n) =>
        kind === "radial" && element === i ? [laid.firstLaid + n] : [],
      );
      const highest = ends.toSorted((a, b) => charge(b) - charge(a))[0];
      return {
        elementId: id,
        base_VPerA: size(solved.volts[2 * i]!, solved.volts[2 * i + 1]!) / amperes,
        tip_VPerA: perAmpere(problem.wires.findIndex((wire) => wire.id === id)),
        ...(highest !== undefined && { radialEnd_VPerA: perAmpere(highest) }),
      };
    }),
  );
}

const size = (re: number, im: number) => Math.sqrt(re * re + im * im);
