/** How well an interpolation has to agree with solves beside its nodes. */
export interface ChartGoal {
  readonly ohm: number;
  /** Gain ahead. */
  readonly dB: number;
  /** Field straight back, as a part of that ahead. */
  readonly behind: number;
}

/** How an interpolation was made, and how far off it was where plans were solved to check it. */
export interface ChartError {
  /** Solves it goes through, and solves beside those that it was held against. */
  readonly nodes: number;
  readonly checks: number;
  /**
   * Largest differences at the checks: feed impedance, gain ahead, field to the side and behind over that ahead. Elsewhere it
   * is seldom more; the most seen was 2.2 times that, and within the goal (24 maps of pairs, 60 places each).
   */
  readonly error_ohm: number;
  readonly error_dB: number;
  readonly errorBehind: number;
  readonly goal: ChartGoal;
  /** Whether the goal was met; else the cap on solves came first, or the checks are still to come. */
  readonly isAgreed: boolean;
}
