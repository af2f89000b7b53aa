import type { Complex } from "../contract.ts";
import type { Chain } from "./Chain.ts";
import { cx } from "./cx.ts";

/** From antenna to rig: what the rig sees of an impedance through a two-port, (aZ + b)/(cZ + d) [ohm]. */
export function rigImpedance(chain: Chain, antenna_ohm: Complex): Complex {
  return cx.div(cx.add(cx.mul(chain.a, antenna_ohm), chain.b), cx.add(cx.mul(chain.c, antenna_ohm), chain.d));
}
