import type { Complex } from "../contract.ts";
import type { Chain } from "./Chain.ts";
import { cx } from "./cx.ts";

/** Chain matrix of an admittance across the line [S]. */
export const shuntChain = (admittance_S: Complex): Chain => ({ a: cx.one, b: cx.zero, c: admittance_S, d: cx.one });
