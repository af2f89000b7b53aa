import type { Complex } from "../../contract.ts";
import { Findings } from "../../plan/Findings.ts";
import type { Problem } from "../../result.ts";
import { checkNumber } from "../checkNumber.ts";
import { GROUND, type Network } from "./Network.ts";

/**
 * What keeps a network from being solved: parts with the same id, lengths or values not above 0 (a resistor may be 0),
 * Q not above 0, a matrix of the wrong shape or not finite, a source or base on ground, two bases on one node.
 */
export function checkNetwork(
  network: Network,
  impedance_ohm: readonly (readonly Complex[])[],
  frequency_MHz: number,
  power_W: number,
): readonly Problem[] {
  const findings = new Findings();
  checkNumber(findings, "", "frequency_MHz", "The frequency", frequency_MHz, { above: 0, unit: "MHz" });
  checkNumber(findings, "", "power_W", "The power", power_W, { above: 0, unit: "W" });
  const { bases, source } = network;
  if (source === GROUND) findings.add("on-ground", "source", "The source is joined to ground; it must have a node.");
  for (const [i, node] of bases.entries()) {
    if (node === GROUND) findings.add("on-ground", `bases[${i}]`, `Base ${i + 1} is joined to ground.`);
    if (bases.indexOf(node) < i) findings.add("same-node", `bases[${i}]`, `Two bases are joined to node "${node}".`);
  }
  const seen = new Set<string>();
  for (const [i, part] of network.parts.entries()) {
    const where = `parts[${i}]`;
    const name = `“${part.id}”`;
    if (seen.has(part.id)) findings.add("same-id", `${where}.id`, `Two parts are called ${name}.`);
    seen.add(part.id);
    switch (part.kind) {
      case "resistor":
        checkNumber(findings, where, "resistance_ohm", `The resistance of ${name}`, part.resistance_ohm, {
          least: 0,
          unit: "ohm",
        });
        break;
      case "coil":
        checkNumber(findings, where, "inductance_uH", `The inductance of ${name}`, part.inductance_uH, {
          above: 0,
          unit: "µH",
        });
        if (part.q !== undefined) checkNumber(findings, where, "q", `The Q of ${name}`, part.q, { above: 0 });
        break;
      case "capacitor":
        checkNumber(findings, where, "capacitance_pF", `The capacitance of ${name}`, part.capacitance_pF, {
          above: 0,
          unit: "pF",
        });
        if (part.q !== undefined) checkNumber(findings, where, "q", `The Q of ${name}`, part.q, { above: 0 });
        break;
      case "line":
        checkNumber(findings, where, "length_m", `The length of ${name}`, part.length_m, { above: 0, unit: "m" });
        break;
      case "contact":
        break;
    }
  }
  const square = impedance_ohm.length === bases.length && impedance_ohm.every((row) => row.length === bases.length);
  if (!square)
    findings.add(
      "wrong-shape",
      "impedance_ohm",
      `The antenna's matrix has ${impedance_ohm.length} rows for ${bases.length} bases; it must be ${bases.length} by ${bases.length}.`,
    );
  for (const [i, row] of impedance_ohm.entries())
    for (const [j, z] of row.entries())
      if (!Number.isFinite(z.re) || !Number.isFinite(z.im))
        findings.add("not-finite", `impedance_ohm[${i}][${j}]`, `Impedance ${i + 1}, ${j + 1} is not a finite number.`);
  return findings.problems;
}
