import type { Box } from "./placeLabels.ts";
import type { Spot } from "./tracePath.ts";

/** A line as a chart has laid it out. */
export interface DrawnTrace {
  readonly id: string;
  readonly name: string;
  readonly role: "live" | "pin";
  readonly style: number;
  readonly points: readonly Spot[];
  readonly path: string;
  /** Where its name stands; null when no place was free. */
  readonly label: Box | null;
}
