import type { KernelPatches } from "./KernelPatches.ts";
import type { KernelTable } from "./KernelTable.ts";

/** A table or series of one soil at one frequency: plain data, tens of kilobytes to a few megabytes. */
export type StoredKernel = KernelTable | KernelPatches;

/** Changes whenever stored kernels of before would be read wrongly. */
export const KERNEL_FORMAT = 1;

/** Numbers kept in all: 64 MB. */
const MOST_NUMBERS = 8e6;

const kept = new Map<string, StoredKernel>();
let numbers = 0;
let listener: ((key: string, kernel: StoredKernel) => void) | undefined;

/**
 * The kernel of that name, built when first asked for, or when the one there does not reach far enough, and kept. Those
 * longest unused make room.
 *
 * @param key names all that the kernel depends on but its reach
 */
export function keepKernel<T extends StoredKernel>(key: string, reach_m: number, build: () => T): T {
  // One key names one kind of kernel.
  const known = kept.get(key) as T | undefined;
  if (known && known.rMax >= reach_m) {
    // Re-inserted at the end: the first key is the one longest unused.
    kept.delete(key);
    kept.set(key, known);
    return known;
  }
  const built = build();
  put(key, built);
  listener?.(key, built);
  return built;
}

/** Takes in a kernel that was kept elsewhere, unless there is one. */
export function putKernel(key: string, kernel: StoredKernel): void {
  if (!kept.has(key)) put(key, kernel);
}

/** Tells of every kernel that is built, so that it can be kept elsewhere. */
export function onKernelBuilt(tell: (key: string, kernel: StoredKernel) => void): void {
  listener = tell;
}

function put(key: string, kernel: StoredKernel): void {
  drop(key);
  kept.set(key, kernel);
  numbers += sizeOf(kernel);
  for (const oldest of kept.keys()) {
    if (numbers <= MOST_NUMBERS || oldest === key) return;
    drop(oldest);
  }
}

function drop(key: string): void {
  const kernel = kept.get(key);
  if (!kernel) return;
  numbers -= sizeOf(kernel);
  kept.delete(key);
}

function sizeOf(kernel: StoredKernel): number {
  return "coefficients" in kernel ? kernel.coefficients.length : kernel.series.length;
}
