import type { PortInput, WireInput } from "../contract.ts";
import type { WireGraph } from "./WireGraph.ts";

/**
 * Junctions at which every wire end has a gap, so that Kirchhoff's law ties the gaps' currents together: each with the
 * indices of its ports. Grounded nodes are none of them; the ground takes what is left over.
 */
export function gappedJunctions(
  wires: readonly WireInput[],
  ports: readonly PortInput[],
  graph: WireGraph,
): { readonly node: number; readonly ports: readonly number[] }[] {
  const wireOf = new Map(wires.map((w, i) => [w.id, i]));
  const at = new Map<number, Map<number, number>>();
  ports.forEach((port, i) => {
    const w = wireOf.get(port.wire);
    if (w === undefined || (port.position !== 0 && port.position !== 1)) return;
    const end = 2 * w + port.position;
    const node = graph.endNode[end]!;
    if (graph.grounded[node]) return;
    const ends = at.get(node) ?? new Map<number, number>();
    ends.set(end, i);
    at.set(node, ends);
  });
  return [...at]
    .filter(([node, ends]) => ends.size > 1 && ends.size === graph.degree[node])
    .map(([node, ends]) => ({ node, ports: [...ends.values()] }));
}
