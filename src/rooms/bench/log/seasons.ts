import type { GroundState, LogEntry, OtherBases } from "../../../../engine/index.ts";
import { groundWords } from "../../../text/benchWords.ts";

interface Middle {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly count: number;
}

export interface SeasonRow {
  readonly ground: GroundState;
  readonly entries: number;
  /** Null where none of them says. */
  readonly resonance_MHz: Middle | null;
  readonly resistance_ohm: Middle | null;
  /** From the first ground of its group that says. */
  readonly shift_kHz: number | null;
  readonly shift_ohm: number | null;
}

/** Entries that can be held against each other: of one fed element, with the other bases alike. */
export interface SeasonGroup {
  readonly fed: string;
  readonly others: OtherBases;
  readonly rows: readonly SeasonRow[];
}

/**
 * Medians by the state of the ground, for each element fed and state of the others; groups of one ground alone have
 * nothing to be held against and are left out. R is taken as noted, at whatever frequency: readings of one frequency compare.
 */
export function seasons(log: readonly LogEntry[]): readonly SeasonGroup[] {
  const groups = new Map<string, LogEntry[]>();
  for (const entry of log) {
    const key = JSON.stringify([entry.fed, entry.others]);
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()].flatMap((entries): SeasonGroup[] => {
    const bare = groundWords.flatMap(({ value: ground }) => {
      const own = entries.filter((one) => one.ground === ground);
      if (own.length === 0) return [];
      return [
        {
          ground,
          entries: own.length,
          resonance_MHz: middle(own.flatMap((one) => one.resonance_MHz ?? [])),
          resistance_ohm: middle(own.flatMap((one) => one.resistance_ohm ?? [])),
        },
      ];
    });
    if (bare.length < 2) return [];
    const f0 = bare.find((one) => one.resonance_MHz)?.resonance_MHz;
    const r0 = bare.find((one) => one.resistance_ohm)?.resistance_ohm;
    const rows = bare.map((one) => ({
      ...one,
      shift_kHz:
        one.resonance_MHz && f0 && one.resonance_MHz !== f0 ? 1000 * (one.resonance_MHz.value - f0.value) : null,
      shift_ohm: one.resistance_ohm && r0 && one.resistance_ohm !== r0 ? one.resistance_ohm.value - r0.value : null,
    }));
    return [{ fed: entries[0]!.fed, others: entries[0]!.others, rows }];
  });
}

function middle(values: readonly number[]): Middle | null {
  if (values.length === 0) return null;
  const sorted = values.toSorted((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return {
    value: (sorted[Math.floor(half)]! + sorted[Math.ceil(half)]!) / 2,
    least: sorted[0]!,
    most: sorted.at(-1)!,
    count: values.length,
  };
}
