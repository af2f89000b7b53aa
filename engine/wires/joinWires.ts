import type { WireInput } from "../contract.ts";
import type { WireGraph } from "./WireGraph.ts";

/** Ends closer than this are one node [m]. */
export const JOIN_DISTANCE_m = 1e-6;

/**
 * Finds which wire ends meet. Ends within JOIN_DISTANCE_m of a node's first end belong to that node; ends within it of
 * z = 0 are grounded when the ground images currents.
 */
export function joinWires(wires: readonly WireInput[], groundPlane: boolean): WireGraph {
  const endNode = new Int32Array(2 * wires.length);
  const at: number[] = [];
  const degree: number[] = [];
  // Hash by cells of the joining distance, so that a thousand radials do not cost a million comparisons.
  const cells = new Map<string, number[]>();
  const cell = (v: number) => Math.floor(v / (2 * JOIN_DISTANCE_m));
  /** Cells in which what is within the joining distance may lie: a cell is twice that, so one beside the point's own, or both in its middle. */
  const around = (v: number): number[] => {
    const own = cell(v);
    const past = v / (2 * JOIN_DISTANCE_m) - own;
    return [own, ...(past < 0.5 + 1e-3 ? [own - 1] : []), ...(past > 0.5 - 1e-3 ? [own + 1] : [])];
  };
  const nearby = (p: readonly [number, number, number]): number | undefined => {
    const [xs, ys, zs] = [around(p[0]), around(p[1]), around(p[2])];
    for (const i of xs)
      for (const j of ys)
        for (const k of zs)
          for (const n of cells.get(`${i},${j},${k}`) ?? []) {
            const dx = at[3 * n]! - p[0];
            const dy = at[3 * n + 1]! - p[1];
            const dz = at[3 * n + 2]! - p[2];
            if (Math.sqrt(dx * dx + dy * dy + dz * dz) <= JOIN_DISTANCE_m) return n;
          }
    return undefined;
  };
  wires.forEach((wire, w) => {
    [wire.from_m, wire.to_m].forEach((p, end) => {
      let n = nearby(p);
      if (n === undefined) {
        n = degree.length;
        at.push(p[0], p[1], p[2]);
        degree.push(0);
        const key = `${cell(p[0])},${cell(p[1])},${cell(p[2])}`;
        const list = cells.get(key);
        if (list) list.push(n);
        else cells.set(key, [n]);
      }
      endNode[2 * w + end] = n;
      degree[n]!++;
    });
  });
  const grounded = new Uint8Array(degree.length);
  if (groundPlane)
    for (let n = 0; n < degree.length; n++) grounded[n] = Math.abs(at[3 * n + 2]!) <= JOIN_DISTANCE_m ? 1 : 0;
  return {
    endNode,
    nodeCount: degree.length,
    nodeAt: Float64Array.from(at),
    degree: Int32Array.from(degree),
    grounded,
  };
}
