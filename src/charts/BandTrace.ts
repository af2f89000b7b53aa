import type { FeedSweep } from "./FeedSweep.ts";

/** One feedpoint of one design over a band. */
export interface BandTrace {
  readonly id: string;
  readonly name: string;
  readonly role: "live" | "pin";
  /** Dash of a pin, 0..3. */
  readonly style: number;
  /** 0 for the first fed element of its design, and so on: drawn thinner. */
  readonly feed: number;
  readonly sweep: FeedSweep;
}
