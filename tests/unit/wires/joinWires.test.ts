import fc from "fast-check";
import { expect, test } from "vitest";
import type { WireInput } from "../../../engine/contract.ts";
import { JOIN_DISTANCE_m, joinWires } from "../../../engine/wires/joinWires.ts";

const coordinate = fc.double({ min: -50, max: 50, noNaN: true });
const part = fc.double({ min: -1, max: 1, noNaN: true });

test("ends meet within the joining distance and not beyond it, wherever they lie and whichever way apart", () => {
  fc.assert(
    fc.property(
      fc.tuple(coordinate, coordinate, coordinate),
      fc.tuple(part, part, part),
      fc.constantFrom(0, 0.5, 0.99, 1.01, 1.5, 3),
      (p, direction, distance) => {
        const size = Math.hypot(...direction);
        fc.pre(size > 0.1);
        const by = (distance * JOIN_DISTANCE_m) / size;
        const q = p.map((v, c) => v + by * direction[c]!) as unknown as [number, number, number];
        const wires: WireInput[] = [
          { id: "one", from_m: [p[0], p[1], p[2] + 9], to_m: p, radius_m: 1e-3 },
          { id: "other", from_m: q, to_m: [q[0] + 7, q[1], q[2]], radius_m: 1e-3 },
        ];
        const { endNode, nodeCount } = joinWires(wires, false);
        expect(endNode[1] === endNode[2]).toBe(distance < 1);
        expect(nodeCount).toBe(distance < 1 ? 3 : 4);
      },
    ),
    { seed: 8, numRuns: 2000 },
  );
});
