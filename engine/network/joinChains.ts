import type { Chain } from "./Chain.ts";
import { cx } from "./cx.ts";

const { add, mul } = cx;

/** Two-ports one after the other, the rig's side first: the product of their chain matrices. None: straight through. */
export function joinChains(...chains: readonly Chain[]): Chain {
  return chains.reduce(
    (m, n) => ({
      a: add(mul(m.a, n.a), mul(m.b, n.c)),
      b: add(mul(m.a, n.b), mul(m.b, n.d)),
      c: add(mul(m.c, n.a), mul(m.d, n.c)),
      d: add(mul(m.c, n.b), mul(m.d, n.d)),
    }),
    { a: cx.one, b: cx.zero, c: cx.zero, d: cx.one },
  );
}
