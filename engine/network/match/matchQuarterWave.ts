import type { Complex } from "../../contract.ts";
import { swr } from "../../readouts/swr.ts";
import { failed, ok, type Result } from "../../result.ts";
import { cx } from "../cx.ts";
import type { Line } from "../line/Line.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";
import { toReflection } from "../smith/toReflection.ts";
import { lengthToTurn_m } from "./lengthToTurn_m.ts";
import type { Match } from "./Match.ts";

/**
 * A section of stock line, single or two in parallel, cut so that its rig end is real and nearest to Z₀. For a real
 * antenna that is the quarter wave, R → Z_s²/R; for a reactive one it is that much longer or shorter as brings the
 * impedance to the real axis. The section wanted for a real R would have √(R Z₀).
 *
 * The best that section can do: rig end Z_s S or Z_s/S with S the antenna's SWR on the section; reflections on the
 * section turn about Z_s, and of that circle the point on the real axis is nearest to Z₀.
 *
 * Source: the quarter-wave transformer of any textbook. Problem "no-match" when the SWR would be no better for it.
 */
export function matchQuarterWave(
  antenna_ohm: Complex,
  frequency_MHz: number,
  wanted_ohm: number,
  line: Line,
  parallel: 1 | 2,
): Result<Match> {
  const z = line.impedance_ohm / parallel;
  const own = swr(antenna_ohm.re, antenna_ohm.im, z);
  const upwards = wanted_ohm > z;
  const rig = upwards ? z * own : z / own;
  const promisedSwr = swr(rig, 0, wanted_ohm);
  const without = swr(antenna_ohm.re, antenna_ohm.im, wanted_ohm);
  const name = `section of ${parallel === 2 ? "two parallel lines" : "one line"}, ${line.name} (${z} ohm)`;
  const refuse = (why: string) => failed({ code: "no-match", where: "feed", message: `No ${name}: ${why}.` });
  if (promisedSwr > without - 1e-9)
    return refuse(
      `it would turn SWR ${without.toFixed(2)} into ${promisedSwr.toFixed(2)}; for a real resistance ${Math.sqrt(antenna_ohm.re * wanted_ohm).toFixed(1)} ohm would be right`,
    );
  const angle = cx.arg(toReflection(antenna_ohm, z));
  const length_m = lengthToTurn_m(line, frequency_MHz, angle, upwards ? 0 : Math.PI);
  if (!(length_m > 0)) return refuse("it comes out with no length");
  const degrees = (360 * length_m) / lineWavelength_m(line, frequency_MHz);
  return ok({
    kind: "quarter-wave",
    name,
    ladder: [{ kind: "line", line, length_m, parallel }],
    promisedSwr,
    notes: [
      {
        code: "section-degrees",
        message: `The section is ${degrees.toFixed(1)} degrees long; 90 would be a quarter wave.`,
        measured: degrees,
      },
    ],
  });
}
