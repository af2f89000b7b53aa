import { antennaImpedance } from "../network/antennaImpedance.ts";
import { checkNumber } from "../network/checkNumber.ts";
import { cx } from "../network/cx.ts";
import { lineChain } from "../network/line/lineChain.ts";
import { lineOfCable } from "../network/line/lineOfCable.ts";
import { rigImpedance } from "../network/rigImpedance.ts";
import { Findings } from "../plan/Findings.ts";
import type { BenchLead, BenchPoint } from "../plan/PlanBench.ts";
import { failed, ok, type Problem, type Result } from "../result.ts";

/**
 * What stands at the base, from what the meter read through a lead of coax: Z = (dZ' − b)/(a − cZ') with the chain matrix of
 * that length of line [ohm]. The lead is trusted as described: 10 cm of it too much or too little turn the reading by
 * 360° × 10 cm over half a wavelength in the cable.
 *
 * Problems: those of the cable; a length below 0 or over 1000 m; readings that no antenna behind that lead could have
 * given (a resistance not above 0), each named by its frequency.
 */
export function atBase(lead: BenchLead, points: readonly BenchPoint[]): Result<readonly BenchPoint[]> {
  const moved = through(lead, points, antennaImpedance);
  if (!moved.ok) return moved;
  const problems = moved.value.flatMap(({ frequency_MHz, resistance_ohm, reactance_ohm }, i): Problem[] =>
    resistance_ohm > 0 && Number.isFinite(reactance_ohm)
      ? []
      : [
          {
            code: "not-passive",
            where: `points[${i}]`,
            message: `At ${frequency_MHz} MHz the resistance behind the lead comes out as ${resistance_ohm.toFixed(1)} ohm; it must be above 0 ohm. Check the lead's length, velocity factor and loss.`,
          },
        ],
  );
  return problems.length > 0 ? failed(...problems) : moved;
}

/** The way back: what a meter reads through the lead of what stands at the base. Problems: those of the lead. */
export function throughLead(lead: BenchLead, points: readonly BenchPoint[]): Result<readonly BenchPoint[]> {
  return through(lead, points, rigImpedance);
}

function through(
  { cable, length_m }: BenchLead,
  points: readonly BenchPoint[],
  move: typeof rigImpedance,
): Result<readonly BenchPoint[]> {
  const findings = new Findings();
  checkNumber(findings, "lead", "length_m", "The length of the lead", length_m, { least: 0, most: 1000, unit: "m" });
  const line = lineOfCable(cable, "lead.cable");
  if (!line.ok || findings.problems.length > 0) return failed(...findings.problems, ...(line.ok ? [] : line.problems));
  return ok(
    points.map(({ frequency_MHz, resistance_ohm, reactance_ohm }) => {
      const z = move(lineChain(line.value, length_m, frequency_MHz), cx.of(resistance_ohm, reactance_ohm));
      return { frequency_MHz, resistance_ohm: z.re, reactance_ohm: z.im };
    }),
  );
}
