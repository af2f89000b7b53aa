import type { Plan } from "../contract.ts";
import { failed, ok, type Problem, type Result } from "../result.ts";
import type { BenchRoles } from "./benchRoles.ts";
import type { RefitRequest } from "./Refit.ts";
import type { RefitReading } from "./refitModel.ts";

/** Points farther than this from the plan's frequency, in parts of it, are left out: the model's curves end there. */
const NEAR = 0.12;
/** As many points of one reading are used: more say little that is new. */
const MOST_POINTS = 41;
/** Cut lengths farther from the plan's than this are another antenna. */
const LENGTHS = 0.2;

/**
 * Readings as the fit takes them: near the plan's frequency, thinned evenly, lengths in the order of roles.
 *
 * Problems, all at once: no readings; one without a point near the plan's frequency; a state that asks for a reflector the
 * plan has not; a length more than a fifth off the plan's; one read through a lead; figures that are not finite or a
 * resistance not above 0.
 */
export function prepareReadings(plan: Plan, roles: BenchRoles, request: RefitRequest): Result<readonly RefitReading[]> {
  const problems: Problem[] = [];
  const say = (code: string, where: string, message: string) => problems.push({ code, where, message });
  if (request.readings.length === 0) say("no-readings", "readings", "There are no readings; a fit needs at least one.");
  const { elevation_deg } = request;
  if (!(elevation_deg > 0 && elevation_deg <= 90))
    say(
      "out-of-range",
      "elevation_deg",
      `The elevation is ${elevation_deg} degrees; it must be above 0 and at most 90.`,
    );
  const driven = plan.elements[roles.driven]!;
  const reflector = roles.reflector === undefined ? undefined : plan.elements[roles.reflector];
  const out = request.readings.map((reading, r): RefitReading => {
    const where = `readings[${r}]`;
    const { state, points, lengths_m, at } = reading;
    if (at === "lead")
      say("through-lead", where, `Reading ${r + 1} was taken through a lead; take the lead out before the fit.`);
    if (state !== "driven-alone" && !reflector)
      say("no-reflector", `${where}.state`, `Reading ${r + 1} is "${state}"; the plan has no reflector.`);
    const length = (name: "driven_m" | "reflector_m", planned: number): number => {
      const cut = lengths_m[name] ?? planned;
      if (!(Math.abs(cut / planned - 1) <= LENGTHS))
        say(
          "far-from-plan",
          `${where}.lengths_m.${name}`,
          `Reading ${r + 1} was taken at ${cut} m; the plan says ${planned} m, and it must be within ${100 * LENGTHS} percent of that.`,
        );
      return cut;
    };
    const cut_m = [
      length("driven_m", driven.height_m),
      ...(reflector ? [length("reflector_m", reflector.height_m)] : []),
    ];
    points.forEach(({ frequency_MHz, resistance_ohm, reactance_ohm }, i) => {
      if (![frequency_MHz, resistance_ohm, reactance_ohm].every(Number.isFinite) || !(resistance_ohm > 0))
        say(
          "not-passive",
          `${where}.points[${i}]`,
          `Reading ${r + 1} says ${resistance_ohm} + j${reactance_ohm} ohm at ${frequency_MHz} MHz; the resistance must be above 0 ohm.`,
        );
    });
    const near = points.filter((p) => Math.abs(p.frequency_MHz / plan.frequency_MHz - 1) <= NEAR);
    if (near.length === 0)
      say(
        "far-from-plan",
        `${where}.points`,
        `Reading ${r + 1} has no point within ${100 * NEAR} percent of ${plan.frequency_MHz} MHz.`,
      );
    return { id: reading.id, state, cut_m, points: thinned(near) };
  });
  return problems.length > 0 ? failed(...problems) : ok(out);
}

function thinned<T>(points: readonly T[]): readonly T[] {
  if (points.length <= MOST_POINTS) return points;
  return Array.from(
    { length: MOST_POINTS },
    (_, i) => points[Math.round((i * (points.length - 1)) / (MOST_POINTS - 1))]!,
  );
}
