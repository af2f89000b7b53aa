import type { Complex } from "../contract.ts";
import type { Chain } from "./Chain.ts";
import { cx } from "./cx.ts";
import { rigImpedance } from "./rigImpedance.ts";

/**
 * Power lost between rig and antenna, 10 log(P₁/P₂), P₁/P₂ = Re(Z₁)|cZ₂ + d|²/Re(Z₂) [dB]. Not finite where the
 * antenna takes no power.
 */
export function chainLoss_dB(chain: Chain, antenna_ohm: Complex): number {
  const ratio = cx.abs(cx.add(cx.mul(chain.c, antenna_ohm), chain.d));
  return 10 * Math.log10((rigImpedance(chain, antenna_ohm).re * ratio * ratio) / antenna_ohm.re);
}
