import type { PlanReadout } from "../../engine/index.ts";

/** One design as the charts draw it: the live one, or a pinned one under it. */
export interface DesignTrace {
  readonly id: string;
  readonly name: string;
  readonly role: "live" | "pin";
  /** Which dash, marker and place in the key a pin has, 0..3; the live design is always solid and uses 0. */
  readonly style: number;
  /** Null while no answer has come. */
  readonly readout: PlanReadout | null;
}
