import type { Note } from "../../result.ts";
import type { Ladder } from "./Ladder.ts";

export type MatchKind =
  | "none"
  | "shunt-coil"
  | "quarter-wave"
  | "l-network"
  | "series-section"
  | "twelfth-wave"
  | "stub";

/** A match as found by closed form for one impedance at one frequency, its parts taken without loss. */
export interface Match {
  readonly kind: MatchKind;
  /** In plain words. */
  readonly name: string;
  readonly ladder: Ladder;
  /** What the closed form promises at the design frequency; 1 where the form is exact. Loss moves it a little. */
  readonly promisedSwr: number;
  readonly notes: readonly Note[];
}

/** Quality of the parts to be bought or wound; absent: no loss. */
export interface PartQuality {
  readonly coilQ?: number;
  readonly capacitorQ?: number;
}
