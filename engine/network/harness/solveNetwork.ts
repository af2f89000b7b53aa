import type { Complex } from "../../contract.ts";
import { measureResidual } from "../../linalg/measureResidual.ts";
import { solveGeneral } from "../../linalg/solveGeneral.ts";
import { failed, ok, type Result } from "../../result.ts";
import { capacitorAdmittance } from "../capacitorAdmittance.ts";
import { coilImpedance } from "../coilImpedance.ts";
import { cx } from "../cx.ts";
import { lineChain } from "../line/lineChain.ts";
import { checkNetwork } from "./checkNetwork.ts";
import { GROUND, type Network, type NetworkSolution, type Part } from "./Network.ts";
import { readNetwork } from "./readNetwork.ts";

/** Currents are unknowns times this, so that all unknowns are volts of one size [ohm]. */
const SCALE_ohm = 50;
/** A relative residual above this is no solution; ordinary harnesses stay below 1e-14. */
const WORST_RESIDUAL = 1e-10;

/**
 * Solves an antenna and its harness as one network at one frequency: modified nodal analysis, one volt at the source,
 * then scaled to the power wanted.
 *
 * Unknowns are the node voltages, the current through each part, the two end currents of each line, those into the
 * bases and that of the source. Each part brings its own law (V = ZI, or I = YV for capacitors and open contacts), a
 * line its chain matrix, the antenna V = ZI; nodes bring Kirchhoff's. So lines of exactly half a wave, closed contacts
 * and antennas whose matrix has no inverse are no special cases.
 *
 * @param impedance_ohm the antenna's open-circuit matrix (`portImpedances`), in the order of `network.bases`
 * @param power_W into the source's node
 * Accuracy: power balances to 1e-12 for ordinary harnesses; refused where the linear system's residual passes 1e-10.
 * Source: C.-W. Ho, A. E. Ruehli, P. A. Brennan, "The modified nodal approach to network analysis", IEEE Trans. CAS 22,
 *   1975 (from memory).
 * Problems: those of `checkNetwork`; "no-solution" where a node hangs in the air or the source is shorted, "no-power" where
 *   the network takes none.
 */
export function solveNetwork(
  network: Network,
  impedance_ohm: readonly (readonly Complex[])[],
  frequency_MHz: number,
  power_W = 100,
): Result<NetworkSolution> {
  const problems = checkNetwork(network, impedance_ohm, frequency_MHz, power_W);
  if (problems.length > 0) return failed(...problems);
  const { parts, bases, source } = network;
  const names = new Set([source, ...bases, ...parts.flatMap((p) => [p.from, p.to])]);
  names.delete(GROUND);
  const nodes = [...names];
  const nodeAt = new Map(nodes.map((name, i) => [name, i]));
  const firstCurrent = nodes.length;
  const partAt: number[] = [];
  let n = firstCurrent;
  for (const part of parts) {
    partAt.push(n);
    n += part.kind === "line" ? 2 : 1;
  }
  const baseAt = n;
  n += bases.length;
  const sourceAt = n++;

  const matrix = new Float64Array(2 * n * n);
  const rhs = new Float64Array(2 * n);
  const put = (row: number | undefined, column: number | undefined, z: Complex) => {
    if (row === undefined || column === undefined) return;
    const q = 2 * (row * n + column);
    matrix[q] = matrix[q]! + z.re;
    matrix[q + 1] = matrix[q + 1]! + z.im;
  };
  const minus = cx.of(-1);
  // Kirchhoff's law at each node: what flows out into the parts, the bases and the source adds up to nothing.
  for (const [k, part] of parts.entries()) {
    put(nodeAt.get(part.from), partAt[k], cx.one);
    // A line's second unknown is the current out of its far end, like that of every other part.
    put(nodeAt.get(part.to), part.kind === "line" ? partAt[k]! + 1 : partAt[k], minus);
  }
  for (const [i, node] of bases.entries()) put(nodeAt.get(node), baseAt + i, cx.one);
  put(nodeAt.get(source), sourceAt, minus);

  // The law of each part, of the antenna and of the source.
  for (const [k, part] of parts.entries())
    stampLaw(part, frequency_MHz, partAt[k]!, nodeAt.get(part.from), nodeAt.get(part.to), put);
  for (const [i, node] of bases.entries()) {
    put(baseAt + i, nodeAt.get(node), cx.one);
    for (const [j, z] of impedance_ohm[i]!.entries()) put(baseAt + i, baseAt + j, cx.scale(z, -1 / SCALE_ohm));
  }
  put(sourceAt, nodeAt.get(source), cx.one);
  rhs[2 * sourceAt] = 1;

  const x = solveGeneral(matrix, n, rhs, 1);
  const residual = measureResidual(matrix, n, x, rhs, 1);
  if (!(residual < WORST_RESIDUAL))
    return failed({
      code: "no-solution",
      where: "parts",
      message: "The network has no one solution: a node hangs in the air, or the source is shorted.",
    });
  const volts = (name: string): Complex => {
    const i = nodeAt.get(name);
    return i === undefined ? cx.zero : { re: x[2 * i]!, im: x[2 * i + 1]! };
  };
  const amperes = (i: number): Complex => ({ re: x[2 * i]! / SCALE_ohm, im: x[2 * i + 1]! / SCALE_ohm });
  const input = amperes(sourceAt);
  if (!(input.re > 1e-15 * cx.abs(input)))
    return failed({ code: "no-power", where: "parts", message: "The network takes no power from the source." });
  const up = Math.sqrt((2 * power_W) / input.re);
  return ok(
    readNetwork(network, impedance_ohm, frequency_MHz, {
      power_W,
      source_A: cx.scale(input, up),
      voltage: (name) => cx.scale(volts(name), up),
      voltageNames: nodes,
      into: parts.map((_, k) => cx.scale(amperes(partAt[k]!), up)),
      outOf: parts.map((part, k) => cx.scale(amperes(partAt[k]! + (part.kind === "line" ? 1 : 0)), up)),
      base_A: bases.map((_, i) => cx.scale(amperes(baseAt + i), up)),
    }),
  );
}

/** Writes the equations of one part: V_from − V_to = Z I, I = Y (V_from − V_to), or a line's chain matrix. */
function stampLaw(
  part: Part,
  frequency_MHz: number,
  row: number,
  from: number | undefined,
  to: number | undefined,
  put: (row: number | undefined, column: number | undefined, z: Complex) => void,
): void {
  const series = (z: Complex) => {
    put(row, from, cx.one);
    put(row, to, cx.of(-1));
    put(row, row, cx.scale(z, -1 / SCALE_ohm));
  };
  const across = (y: Complex) => {
    put(row, from, cx.scale(y, SCALE_ohm));
    put(row, to, cx.scale(y, -SCALE_ohm));
    put(row, row, cx.of(-1));
  };
  switch (part.kind) {
    case "resistor":
      series(cx.of(part.resistance_ohm));
      break;
    case "coil":
      series(coilImpedance(part.inductance_uH, frequency_MHz, part.q));
      break;
    case "capacitor":
      across(capacitorAdmittance(part.capacitance_pF, frequency_MHz, part.q));
      break;
    case "contact":
      if (part.closed) series(cx.zero);
      else across(cx.zero);
      break;
    case "line": {
      const { a, b, c, d } = lineChain(part.line, part.length_m, frequency_MHz);
      put(row, from, cx.of(-1));
      put(row, to, a);
      put(row, row + 1, cx.scale(b, 1 / SCALE_ohm));
      put(row + 1, row, cx.of(-1));
      put(row + 1, to, cx.scale(c, SCALE_ohm));
      put(row + 1, row + 1, d);
    }
  }
}
