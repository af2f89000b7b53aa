import type { Line } from "../line/Line.ts";
import type { FeedPoint } from "./FeedPoint.ts";
import type { PartQuality } from "./Match.ts";

export interface MatchRequest extends PartQuality {
  /** The antenna over the band wanted, frequencies rising. */
  readonly feed: readonly FeedPoint[];
  /** Where the match is made; inside the band. */
  readonly design_MHz: number;
  /** Impedance the match has to show, that of the line to the rig. */
  readonly wanted_ohm: number;
  /** Highest SWR the user takes, above 1. */
  readonly swrLimit: number;
  /** Cables at hand for sections. Those of the wanted impedance serve as main line; the first of them is used. */
  readonly stock: readonly Line[];
  /** At the rig's side of the match, for voltages and currents; absent: 100. */
  readonly power_W?: number;
}
