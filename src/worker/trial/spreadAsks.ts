import { askKey, type TrialAsk } from "../../../engine/index.ts";
import { tablesKey } from "./tablesKey.ts";

/** What is worth building the soil's tables a second time for: so many asks that take them are waiting. */
export const worthTables = 4;

/** What is known of a hand when something is chosen for it. */
export interface HandState {
  /** Tables it has built, by `tablesKey`. */
  readonly tables: ReadonlySet<string>;
}

/**
 * The asks that go to a hand next, `most` of them at most, all with the same tables: those whose tables it has; else
 * those whose tables no hand has; else, where enough wait for the tables of another, some of these.
 */
export function spreadAsks(
  waiting: readonly TrialAsk[],
  hand: HandState,
  others: readonly HandState[],
  most: number,
): readonly TrialAsk[] {
  const byTables = new Map<string, TrialAsk[]>();
  for (const ask of waiting) {
    const key = tablesKey(ask);
    const group = byTables.get(key);
    if (group) group.push(ask);
    else byTables.set(key, [ask]);
  }
  const groups = [...byTables];
  const own = groups.find(([key]) => key === "" || hand.tables.has(key));
  const free = own ?? groups.find(([key]) => !others.some((other) => other.tables.has(key)));
  const stolen = free ?? groups.find(([, asks]) => asks.length >= worthTables);
  return stolen?.[1].slice(0, most) ?? [];
}

/** Each ask once, without those that `skip` names. */
export function onceEach(asks: readonly TrialAsk[], skip: (key: string) => boolean): Map<string, TrialAsk> {
  const found = new Map<string, TrialAsk>();
  for (const ask of asks) {
    const key = askKey(ask);
    if (!skip(key) && !found.has(key)) found.set(key, ask);
  }
  return found;
}
