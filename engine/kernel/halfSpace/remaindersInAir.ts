import { pairMoments } from "../pairMoments.ts";
import type { KernelTable } from "./KernelTable.ts";
import { levelLine } from "./levelLine.ts";
import type { Remainders } from "./Remainders.ts";
import { readTable } from "./readTable.ts";

/** What soil reflects between two segments in air. */
export function remaindersInAir(table: KernelTable): Remainders {
  const { k0, k1Re, k1Im } = table.place.halfSpace;
  return {
    mirrored: true,
    staticPart: table.staticPart,
    k1: Math.sqrt(k1Re * k1Re + k1Im * k1Im),
    k: k0,
    read(out, rho, zeta) {
      readTable(out, table, rho, zeta);
    },
    levelLine: (zeta) => levelLine(table, zeta),
    moments(out, segments, s, t) {
      pairMoments(out, segments, s, t, true, k0);
    },
  };
}
