import type { DesignTrace } from "./DesignTrace.ts";
import type { Spot } from "./tracePath.ts";

/** The marker of a trace about a spot: a disc for the live design, then square, triangle, diamond, cross by pin. */
export function markPath({ role, style }: Pick<DesignTrace, "role" | "style">, [x, y]: Spot): string {
  const at = `M${x.toFixed(1)},${y.toFixed(1)}`;
  if (role === "live") return `${at}m-5,0a5,5,0,1,0,10,0a5,5,0,1,0,-10,0Z`;
  switch (style % 4) {
    case 0:
      return `${at}m-4,-4h8v8h-8Z`;
    case 1:
      return `${at}m0,-5l5.5,9h-11Z`;
    case 2:
      return `${at}m0,-5.5l5.5,5.5l-5.5,5.5l-5.5,-5.5Z`;
    default:
      return `${at}m-1.5,-5h3v3.5h3.5v3h-3.5v3.5h-3v-3.5h-3.5v-3h3.5Z`;
  }
}
