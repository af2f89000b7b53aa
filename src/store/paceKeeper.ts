import type { fullPace } from "./fullPace.ts";

/** Remembers what full answers took since the plan was last still, and says whether they keep pace with a drag. */
export interface PaceKeeper {
  /** @param radials of the plan, in all fields together */
  keepsPace(radials: number): boolean;
  /** An answer has come while the plan was still: where the soil's tables were built for it, a long time says little. */
  restedFor(took_ms: number): void;
  /** … and one while the plan moves. */
  movedFor(took_ms: number): void;
  /** One has kept the hand waiting so long that a preview took its place. Once may be chance; the second time is once too often. */
  keptWaiting(): void;
}

export function paceKeeper({ quick_ms, slow_ms, judged, fewRadials }: typeof fullPace): PaceKeeper {
  /** Null where it is not known. */
  let isQuick: boolean | null = null;
  let last_ms: readonly number[] = [];
  let waits = 0;
  return {
    keepsPace: (radials) => isQuick ?? radials <= fewRadials,
    restedFor(took_ms) {
      isQuick = took_ms <= quick_ms ? true : null;
      last_ms = [];
      waits = 0;
    },
    movedFor(took_ms) {
      last_ms = [...last_ms, took_ms].slice(-judged);
      const late = last_ms.filter((ms) => ms > slow_ms).length;
      if (late > judged / 2) isQuick = false;
    },
    keptWaiting() {
      waits++;
      if (waits > 1) isQuick = false;
    },
  };
}
