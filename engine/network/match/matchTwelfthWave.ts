import type { Complex } from "../../contract.ts";
import { swr } from "../../readouts/swr.ts";
import { failed, ok, type Result } from "../../result.ts";
import { cx } from "../cx.ts";
import type { Line } from "../line/Line.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";
import type { Match } from "./Match.ts";
import { refuseMain } from "./refuseMain.ts";

/**
 * Two short equal sections between an antenna near Z_s and a main line Z₀, cut from those very lines: next to the
 * antenna Z₀, then Z_s, each with tan²βl = 1/(n + 1 + 1/n), n = Z_s/Z₀; near a twelfth of a wave for n near 1.
 *
 * Exact for an antenna of Z_s + j0; for others `promisedSwr` is what is left.
 * Source: the twelfth-wave transformer of the trade's handbooks (from memory); checked here by analysis.
 * Problems "no-match": when the SWR would be no better for it, or the main line is not Z₀.
 */
export function matchTwelfthWave(
  antenna_ohm: Complex,
  frequency_MHz: number,
  wanted_ohm: number,
  main: Line,
  section: Line,
  parallel: 1 | 2 = 1,
): Result<Match> {
  const wrongMain = refuseMain(main, wanted_ohm);
  if (wrongMain) return failed(wrongMain);
  const zs = section.impedance_ohm / parallel;
  const n = zs / wanted_ohm;
  const tan = 1 / Math.sqrt(n + 1 + 1 / n);
  const rig = turn(turn(antenna_ohm, wanted_ohm, tan), zs, tan);
  const promisedSwr = swr(rig.re, rig.im, wanted_ohm);
  const without = swr(antenna_ohm.re, antenna_ohm.im, wanted_ohm);
  const name = `two twelfth-wave sections, ${main.name} and ${parallel === 2 ? "two parallel " : ""}${section.name}`;
  if (promisedSwr > without - 1e-9)
    return failed({
      code: "no-match",
      where: "feed",
      message: `No ${name}: they would turn SWR ${without.toFixed(2)} into ${promisedSwr.toFixed(2)}; an antenna of ${zs} ohm would be right.`,
    });
  const part = Math.atan(tan) / (2 * Math.PI);
  return ok({
    kind: "twelfth-wave",
    name,
    ladder: [
      { kind: "line", line: main, length_m: part * lineWavelength_m(main, frequency_MHz), parallel: 1 },
      { kind: "line", line: section, length_m: part * lineWavelength_m(section, frequency_MHz), parallel },
    ],
    promisedSwr,
    notes: [],
  });
}

/** Z through a lossless line: Z₀ (Z + jZ₀t)/(Z₀ + jZt). */
function turn(z: Complex, z0: number, tan: number): Complex {
  return cx.scale(cx.div({ re: z.re, im: z.im + z0 * tan }, { re: z0 - z.im * tan, im: z.re * tan }), z0);
}
