import type { Complex } from "../../contract.ts";
import { failed, ok, type Result } from "../../result.ts";
import { cx } from "../cx.ts";
import type { Line } from "../line/Line.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";
import { toReflection } from "../smith/toReflection.ts";
import { lengthToTurn_m } from "./lengthToTurn_m.ts";
import type { Match } from "./Match.ts";
import { refuseMain } from "./refuseMain.ts";

/**
 * The series section: a length of the main line (Z₀), then a length of another line (n Z₀), then main line on to the rig.
 * The general form, for any impedance inside its reach.
 *
 *   tan²βl₂ = 4n²ρ²/((n² − 1)² − ρ²(n² + 1)²),   ρ = |Γ| of the antenna on Z₀
 *
 * and l₁ turns the antenna's reflection onto the conjugate of what the section, ended in Z₀, shows to the antenna: in a
 * network without loss a match at one place is a match at all. Two solutions, ±tan; the shorter section first.
 *
 * Source: derived here from the conjugate match; the same lengths as the trade's series-section transformer.
 * Problems "no-match": ρ beyond |n² − 1|/(n² + 1), an antenna that is matched already, a main line that is not Z₀.
 */
export function matchSeriesSection(
  antenna_ohm: Complex,
  frequency_MHz: number,
  wanted_ohm: number,
  main: Line,
  section: Line,
  parallel: 1 | 2 = 1,
): Result<readonly Match[]> {
  const wrongMain = refuseMain(main, wanted_ohm);
  if (wrongMain) return failed(wrongMain);
  const n = section.impedance_ohm / parallel / wanted_ohm;
  const gamma = toReflection(antenna_ohm, wanted_ohm);
  const rho = cx.abs(gamma);
  const name = `series section of ${parallel === 2 ? "two parallel lines" : "one line"}, ${section.name}`;
  const refuse = (why: string) => failed({ code: "no-match", where: "feed", message: `No ${name}: ${why}.` });
  if (rho < 1e-9) return refuse("the antenna is matched without it");
  const reach = Math.abs(n * n - 1) / (n * n + 1);
  if (!(rho < reach))
    return refuse(
      `it can match an SWR of up to ${((1 + reach) / (1 - reach)).toFixed(2)}, and the antenna's is ${((1 + rho) / (1 - rho)).toFixed(2)}`,
    );
  const tan = (2 * n * rho) / Math.sqrt((n * n - 1) ** 2 - (rho * (n * n + 1)) ** 2);
  const wave = lineWavelength_m(section, frequency_MHz);
  return ok(
    [tan, -tan].map((t): Match => {
      const angle = Math.atan(t);
      const length_m = ((angle > 0 ? angle : angle + Math.PI) / (2 * Math.PI)) * wave;
      // Γ of the section ended in Z₀, seen from the antenna: jt(n² − 1)/(2n + jt(n² + 1)).
      const seen = cx.div({ re: 0, im: t * (n * n - 1) }, { re: 2 * n, im: t * (n * n + 1) });
      const before_m = lengthToTurn_m(main, frequency_MHz, cx.arg(gamma), -cx.arg(seen));
      return {
        kind: "series-section",
        name,
        ladder: [
          ...(before_m > 0 ? [{ kind: "line", line: main, length_m: before_m, parallel: 1 } as const] : []),
          { kind: "line", line: section, length_m, parallel },
        ],
        promisedSwr: 1,
        notes: [],
      };
    }),
  );
}
