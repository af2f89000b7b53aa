import type { WireInput } from "../contract.ts";
import type { Note } from "../result.ts";
import { SHORTEST_SEGMENT_RADII } from "../wires/segmentCounts.ts";
import type { PortStates } from "./portStates.ts";

/** Fewer segments than this on a wire that was left to the engine leave a visible error. */
export const FEW_SEGMENTS = 8;

/** What the mesh does to the answer: segments too short for their thickness, or too few because of it. */
export function meshNotes(wires: readonly WireInput[], states: PortStates): Note[] {
  const notes: Note[] = [];
  if (states.shortest_radii < SHORTEST_SEGMENT_RADII - 1e-9)
    notes.push({
      code: "thin-wire-limit",
      message: `Segments are down to ${states.shortest_radii.toFixed(2)} radii long; below ${SHORTEST_SEGMENT_RADII} the thin-wire kernel loses accuracy.`,
      measured: states.shortest_radii,
    });
  const { firstOfWire } = states.segments;
  const counts = wires.map((_, w) => firstOfWire[w + 1]! - firstOfWire[w]!);
  const fewest = counts.reduce(
    (least, n, w) => (wires[w]!.segments === undefined && n < counts[least]! ? w : least),
    0,
  );
  if (wires[fewest]!.segments === undefined && counts[fewest]! < FEW_SEGMENTS)
    notes.push({
      code: "few-segments",
      message: `Wire "${wires[fewest]!.id}" is so thick for its length that only ${counts[fewest]} segments fit; its impedance is rough.`,
      measured: counts[fewest]!,
    });
  return notes;
}
