import type { Complex } from "../contract.ts";
import type { Chain } from "./Chain.ts";
import { cx } from "./cx.ts";

/**
 * From rig to antenna: the impedance behind a two-port that shows `rig_ohm` at the rig, (dZ − b)/(a − cZ) [ohm].
 * Through much loss small errors of the reading grow by that loss, twice over in dB.
 */
export function antennaImpedance(chain: Chain, rig_ohm: Complex): Complex {
  return cx.div(cx.sub(cx.mul(chain.d, rig_ohm), chain.b), cx.sub(chain.a, cx.mul(chain.c, rig_ohm)));
}
