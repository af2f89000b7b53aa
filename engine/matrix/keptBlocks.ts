import type { BlockStore } from "./BlockStore.ts";

/** Numbers kept in all stores together: 48 MB; a pair on 120 radials each takes 20. */
const MOST_NUMBERS = 6e6;
/** Surroundings (frequency and soil) kept at a time. */
const MOST_STORES = 24;

interface Kept extends BlockStore {
  readonly blocks: Map<string, Float64Array>;
}

const stores = new Map<string, Kept>();
let numbers = 0;

/**
 * The blocks kept for a surrounding across solutions, so that a plan that changes in one wire is integrated anew in that
 * wire only. When there are too many, the stores longest unused are emptied, then the oldest blocks of the one in use.
 *
 * @param name names frequency and soil: blocks are good for these alone
 */
export function keptBlocks(name: string): BlockStore {
  let store = stores.get(name);
  if (!store) {
    const blocks = new Map<string, Float64Array>();
    store = {
      blocks,
      get: (key) => blocks.get(key),
      set(key, block) {
        blocks.set(key, block);
        numbers += block.length;
        makeRoom(name);
      },
    };
  }
  stores.delete(name);
  stores.set(name, store);
  if (stores.size > MOST_STORES) drop(stores.keys().next().value!);
  return store;
}

function makeRoom(name: string): void {
  for (const other of stores.keys()) {
    if (numbers <= MOST_NUMBERS) return;
    if (other !== name) drop(other);
  }
  const blocks = stores.get(name)?.blocks;
  if (!blocks) return;
  for (const [key, block] of blocks) {
    if (numbers <= MOST_NUMBERS) return;
    blocks.delete(key);
    numbers -= block.length;
  }
}

function drop(name: string): void {
  for (const block of stores.get(name)!.blocks.values()) numbers -= block.length;
  stores.delete(name);
}
