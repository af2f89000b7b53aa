import { atBase, type BenchLead, type BenchPoint, type BenchReading } from "../../../../engine/index.ts";

/** The points of a reading as they are at the base itself; null where its cable is not stated or cannot be so. */
export function readingAtBase(reading: BenchReading, lead: BenchLead | undefined): readonly BenchPoint[] | null {
  if (reading.at === "base") return reading.points;
  const carried = lead ? atBase(lead, reading.points) : null;
  return carried?.ok ? carried.value : null;
}
