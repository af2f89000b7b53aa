import { buildLine } from "./buildLine.ts";
import type { KernelLine } from "./KernelLine.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import type { KernelTable } from "./KernelTable.ts";

/** Height sums for which a line is kept per table: three heights of radials make six. */
const MOST_LINES = 6;
const lines = new WeakMap<KernelTable | KernelPatches, Map<number, KernelLine>>();

/**
 * The line of a table at the height sum of two level wires, built when first asked for (a millisecond) and kept with the
 * table; null once there are six, which only wires at many heights bring about.
 */
export function levelLine(table: KernelTable | KernelPatches, zeta: number): KernelLine | null {
  let known = lines.get(table);
  if (!known) {
    known = new Map();
    lines.set(table, known);
  }
  let line = known.get(zeta);
  if (!line) {
    if (known.size >= MOST_LINES) return null;
    line = buildLine(table, "zeta", zeta, 0, table.rMax);
    known.set(zeta, line);
  }
  return line;
}
