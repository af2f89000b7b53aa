import type { Complex } from "../contract.ts";
import type { Chain } from "./Chain.ts";
import { cx } from "./cx.ts";

/** Chain matrix of an impedance in series [ohm]. */
export const seriesChain = (impedance_ohm: Complex): Chain => ({ a: cx.one, b: impedance_ohm, c: cx.zero, d: cx.one });
