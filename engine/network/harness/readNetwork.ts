import type { Complex } from "../../contract.ts";
import { capacitorAdmittance } from "../capacitorAdmittance.ts";
import { coilImpedance } from "../coilImpedance.ts";
import { cx } from "../cx.ts";
import type { Network, NetworkSolution, Part, PartReadout } from "./Network.ts";

/** Peak phasors of a solved network, at the power asked for. */
export interface NetworkPhasors {
  readonly power_W: number;
  readonly source_A: Complex;
  readonly voltage: (node: string) => Complex;
  readonly voltageNames: readonly string[];
  /** Into each part at `from`, and out of it at `to`. */
  readonly into: readonly Complex[];
  readonly outOf: readonly Complex[];
  readonly base_A: readonly Complex[];
}

/**
 * Powers, ratios and stresses from the phasors of a solved network.
 *
 * Each power comes from its own law, not from the balance: I²R in coils, V²G in capacitors, ½ Re(I* Z I) in the antenna,
 * end powers in lines, ½ Re(VI*) at the source; so the balance is a check on the solution.
 */
export function readNetwork(
  network: Network,
  impedance_ohm: readonly (readonly Complex[])[],
  frequency_MHz: number,
  phasors: NetworkPhasors,
): NetworkSolution {
  const { abs, dot, sub } = cx;
  const { voltage, power_W } = phasors;
  const parts = network.parts.map((part, k): PartReadout => {
    const v1 = voltage(part.from);
    const v2 = voltage(part.to);
    const i1 = phasors.into[k]!;
    const i2 = phasors.outOf[k]!;
    const across = sub(v1, v2);
    const line = part.kind === "line";
    const volts = line ? Math.max(abs(v1), abs(v2)) : abs(across);
    const amperes = line ? Math.max(abs(i1), abs(i2)) : abs(i1);
    const dissipated_W = line ? (dot(v1, i1) - dot(v2, i2)) / 2 : lumpedLoss(part, frequency_MHz, across, i1);
    return {
      id: part.id,
      kind: part.kind,
      from: { node: part.from, voltage_V: v1, current_A: i1, power_W: dot(v1, i1) / 2 },
      to: { node: part.to, voltage_V: v2, current_A: cx.neg(i2), power_W: -dot(v2, i2) / 2 },
      dissipated_W,
      voltage_Vrms: volts / Math.SQRT2,
      voltage_Vpeak: volts,
      current_Arms: amperes / Math.SQRT2,
      current_Apeak: amperes,
    };
  });
  const bases = network.bases.map((node, i) => {
    const voltage_V = voltage(node);
    const current_A = phasors.base_A[i]!;
    const driven = impedance_ohm[i]!.reduce((v, z, j) => cx.add(v, cx.mul(z, phasors.base_A[j]!)), cx.zero);
    return {
      node,
      voltage_V,
      current_A,
      impedance_ohm: cx.div(voltage_V, current_A),
      power_W: dot(driven, current_A) / 2,
      voltage_Vrms: abs(voltage_V) / Math.SQRT2,
      current_Arms: abs(current_A) / Math.SQRT2,
    };
  });
  const dissipated_W = parts.reduce((sum, p) => sum + p.dissipated_W, 0);
  const antenna_W = bases.reduce((sum, b) => sum + b.power_W, 0);
  const source_V = voltage(network.source);
  return {
    inputImpedance_ohm: cx.div(source_V, phasors.source_A),
    power_W,
    voltages_V: Object.fromEntries(phasors.voltageNames.map((name) => [name, voltage(name)])),
    parts,
    bases,
    currentRatios: phasors.base_A.map((i) => cx.div(i, phasors.base_A[0]!)),
    dissipated_W,
    antenna_W,
    imbalance: Math.abs(dot(source_V, phasors.source_A) / 2 - dissipated_W - antenna_W) / power_W,
    loss_dB: 10 * Math.log10(power_W / antenna_W),
  };
}

function lumpedLoss(part: Part, frequency_MHz: number, across: Complex, through: Complex): number {
  switch (part.kind) {
    case "resistor":
      return (cx.dot(through, through) * part.resistance_ohm) / 2;
    case "coil":
      return (cx.dot(through, through) * coilImpedance(part.inductance_uH, frequency_MHz, part.q).re) / 2;
    case "capacitor":
      return (cx.dot(across, across) * capacitorAdmittance(part.capacitance_pF, frequency_MHz, part.q).re) / 2;
    case "line":
    case "contact":
      return 0;
  }
}
