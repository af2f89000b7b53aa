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
 * A single stub across the main line at a distance from the antenna: where the conductance is 1/Z₀ the stub takes away
 * the susceptance. The reflection there has the angle ±arccos(−ρ), the susceptance is ∓2ρ/√(1 − ρ²)/Z₀.
 *
 * Four solutions: two places, each with an open stub (B = tan βl/Z_s) and a shorted one (B = −cot βl/Z_s), every length
 * below half a wave; the least cable in all first.
 * Source: single-stub tuning, any textbook (Pozar, section 5.2, from memory).
 * Problems "no-match": an antenna that is matched already, a main line that is not Z₀.
 */
export function matchStub(
  antenna_ohm: Complex,
  frequency_MHz: number,
  wanted_ohm: number,
  main: Line,
  stub: Line = main,
): Result<readonly Match[]> {
  const wrongMain = refuseMain(main, wanted_ohm);
  if (wrongMain) return failed(wrongMain);
  const gamma = toReflection(antenna_ohm, wanted_ohm);
  const rho = cx.abs(gamma);
  if (rho < 1e-9)
    return failed({ code: "no-match", where: "feed", message: "No stub: the antenna is matched without it." });
  const wave = lineWavelength_m(stub, frequency_MHz);
  const found = ([1, -1] as const).flatMap((side) => {
    const distance_m = lengthToTurn_m(main, frequency_MHz, cx.arg(gamma), side * Math.acos(-rho));
    // What the stub must add, relative to 1/Z_s.
    const b = ((side * 2 * rho) / Math.sqrt(1 - rho * rho)) * (stub.impedance_ohm / wanted_ohm);
    return (["open", "shorted"] as const).map((end): { match: Match; cable_m: number } => {
      const angle = end === "open" ? Math.atan(b) : Math.atan(-1 / b);
      const length_m = ((angle > 0 ? angle : angle + Math.PI) / (2 * Math.PI)) * wave;
      return {
        cable_m: distance_m + length_m,
        match: {
          kind: "stub",
          name: `${end} stub, ${stub.name}`,
          ladder: [
            ...(distance_m > 0 ? [{ kind: "line", line: main, length_m: distance_m, parallel: 1 } as const] : []),
            { kind: "stub", end, line: stub, length_m },
          ],
          promisedSwr: 1,
          notes: [],
        },
      };
    });
  });
  return ok(found.sort((a, b) => a.cable_m - b.cable_m).map(({ match }) => match));
}
