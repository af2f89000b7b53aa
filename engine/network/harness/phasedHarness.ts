import type { Complex } from "../../contract.ts";
import { failed, ok, type Result } from "../../result.ts";
import { checkNumber } from "../checkNumber.ts";
import { cx } from "../cx.ts";
import type { Line } from "../line/Line.ts";
import { lineChain } from "../line/lineChain.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";
import type { PartQuality } from "../match/Match.ts";
import { checkPair } from "./checkPair.ts";
import { drivePoints } from "./drivePoints.ts";
import type { HarnessDesign } from "./HarnessDesign.ts";
import { GROUND, type Part } from "./Network.ts";
import { reactivePart } from "./reactivePart.ts";

export interface PhasedHarnessRequest extends PartQuality {
  readonly impedance_ohm: readonly (readonly Complex[])[];
  readonly frequency_MHz: number;
  /** Current of the second element over the first's. */
  readonly ratio: Complex;
  /** To each base; odd quarter waves (`oddQuarters_m`) force the currents. 0: the parts sit at the base itself. */
  readonly lengths_m: readonly [number, number];
  readonly line: Line;
  /** The element whose line joins the rig's directly; the phasing parts feed the other. Absent: the first. */
  readonly straight?: 1 | 2;
  /**
   * "l-network": a part in series and one across. "pi-network": one more across at the tee, which makes the branch
   * resistive; at 90 degrees this is the lumped quarter wave. "line-and-part": a length of `delay` and a part across.
   */
  readonly phasing: "l-network" | "pi-network" | "line-and-part";
  /** For "line-and-part". */
  readonly delay?: Line;
}

/**
 * A harness that gives the wanted base currents: lines to both bases, one joined straight to the rig's line at the tee
 * (A), the other fed through phasing parts (B).
 *
 * With the wanted currents the bases show V = ZI; chain matrices carry voltage and current back to A and B, loss and all.
 * The parts then have to make t = V_A/V_B into the admittance Y = G + jB at B.
 *   L: X = Im t/G in series, (1 − Re t)/X − B across at B.
 *   Line of Z_d: sin θ = Im t/(Z_d G), (cos θ − Re t)/(Z_d sin θ) − B across at B; the shorter of the two lengths.
 * Over quarter waves t is the inverse ratio of the currents, whatever the antenna.
 *
 * Accuracy: exact but for loss in the phasing parts themselves, which `solveNetwork` then shows.
 * Source: derived here from Kirchhoff's laws; current forcing and L-network phasing are common practice for phased
 *   verticals (R. Lewallen's and F. Gehrke's articles of the 1970s and 80s, from memory).
 * Problems: those of `checkPair`; lengths below 0; "no-match" where t is real but not 1 (no reactance turns the phase),
 *   where G is zero, or where a delay line's impedance is too low to reach.
 */
export function phasedHarness(request: PhasedHarnessRequest): Result<HarnessDesign> {
  const { impedance_ohm, frequency_MHz, ratio, lengths_m, line, phasing, straight = 1, delay } = request;
  const findings = checkPair(impedance_ohm, ratio, frequency_MHz);
  for (const [i, length] of lengths_m.entries())
    checkNumber(findings, "lengths_m", i, `The length of line ${i + 1}`, length, { least: 0, unit: "m" });
  for (const key of ["coilQ", "capacitorQ"] as const)
    if (request[key] !== undefined)
      checkNumber(findings, "", key, key === "coilQ" ? "The Q of coils" : "The Q of capacitors", request[key], {
        above: 0,
      });
  if (phasing === "line-and-part" && !delay)
    findings.add("missing", "delay", "The delay line is missing; it must be one of the cables.");
  if (findings.problems.length > 0) return failed(...findings.problems);
  const bases = ["base 1", "base 2"] as const;
  const nodes = lengths_m.map((length, i) => (length > 0 ? (i + 1 === straight ? "tee" : "phased") : bases[i]!));
  const starts = drivePoints(impedance_ohm, [cx.one, ratio]).map(({ voltage_V: v, current_A: i }, k) => {
    const { a, b, c, d } = lineChain(line, lengths_m[k]!, frequency_MHz);
    return { v: cx.add(cx.mul(a, v), cx.mul(b, i)), i: cx.add(cx.mul(c, v), cx.mul(d, i)) };
  });
  const [atA, atB] = straight === 1 ? [0, 1] : [1, 0];
  const t = cx.div(starts[atA]!.v, starts[atB]!.v);
  const y = cx.div(starts[atB]!.i, starts[atB]!.v);
  const a = nodes[atA]!;
  const b = nodes[atB]!;
  const parts: Part[] = lengths_m.flatMap((length_m, i): Part[] =>
    length_m > 0 ? [{ id: `line ${i + 1}`, kind: "line", from: nodes[i]!, to: bases[i]!, line, length_m }] : [],
  );
  const network = { source: a, bases, parts };
  const design = (name: string, ...more: readonly Part[]): Result<HarnessDesign> =>
    ok({
      kind: phasing,
      name,
      network: { ...network, parts: [...parts, ...more] },
      wantedRatio: ratio,
      isExact: true,
      notes: [],
    });
  const none = (why: string) => failed({ code: "no-match", where: "ratio", message: `No such harness: ${why}.` });

  if (cx.abs(cx.sub(t, cx.one)) < 1e-9)
    return design("lines joined directly", { id: "link", kind: "contact", from: a, to: b, closed: true });
  if (Math.abs(y.re) < 1e-12 * cx.abs(y))
    return none("the phased branch takes no power with these currents, so reactances cannot turn its phase");
  if (Math.abs(t.im) < 1e-9 * cx.abs(t))
    return none(
      `the phase between the lines' voltages is ${t.re > 0 ? 0 : 180} degrees; choose other lengths, half a wave more in one of them for 180`,
    );
  const across = (b_S: number, id: string, node: string): readonly Part[] =>
    reactivePart(id, node, GROUND, { susceptance_S: b_S }, frequency_MHz, request);
  if (phasing === "line-and-part") {
    const z = delay!.impedance_ohm;
    const sin = t.im / (z * y.re);
    if (!(Math.abs(sin) <= 1))
      return none(
        `${delay!.name} has ${z} ohm, and the delay line must have at least ${Math.abs(t.im / y.re).toFixed(1)} ohm`,
      );
    const theta = sin > 0 ? Math.asin(sin) : Math.PI - Math.asin(sin);
    const length_m = (theta / (2 * Math.PI)) * lineWavelength_m(delay!, frequency_MHz);
    return design(
      "delay line with a part across its end",
      { id: "delay line", kind: "line", from: a, to: b, line: delay!, length_m },
      ...across((Math.cos(theta) - t.re) / (z * sin) - y.im, "across", b),
    );
  }
  const x_ohm = t.im / y.re;
  const series = reactivePart("in series", a, b, { reactance_ohm: x_ohm }, frequency_MHz, request);
  const load = across((1 - t.re) / x_ohm - y.im, "across", b);
  if (phasing === "l-network") return design("L network before one line", ...series, ...load);
  // Current into the branch over V_A: (1 − 1/t)/jX; its susceptance is taken away at the tee.
  const branch = cx.div(cx.sub(cx.one, cx.inv(t)), cx.of(0, x_ohm));
  return design("pi network before one line", ...series, ...load, ...across(-branch.im, "across at the tee", a));
}
