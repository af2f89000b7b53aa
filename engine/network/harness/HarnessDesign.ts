import type { Complex } from "../../contract.ts";
import type { Note } from "../../result.ts";
import type { Network } from "./Network.ts";

/** A harness for two fed elements, and the base currents it was made for. */
export interface HarnessDesign {
  readonly kind: "delay-line" | "equal-voltage" | "l-network" | "pi-network" | "line-and-part";
  /** In plain words. */
  readonly name: string;
  readonly network: Network;
  /** Current of the second element over that of the first. */
  readonly wantedRatio: Complex;
  /** What is done without loss in the phasing parts; false where the ratio was never going to be met. */
  readonly isExact: boolean;
  readonly notes: readonly Note[];
}
