/** One line of the printed table. */
export interface BenchRow {
  readonly name: string;
  /** In `unit`, lower is better, unless `atLeast`. */
  readonly measured: number;
  readonly goal: number;
  readonly unit: "ms" | "×" | "frames/s" | "kB" | "MB" | "shift";
  readonly atLeast?: boolean;
  /** What to know when reading the figure. */
  readonly remark?: string;
}

export function isMet({ measured, goal, atLeast }: BenchRow): boolean {
  return atLeast ? measured >= goal : measured <= goal;
}
