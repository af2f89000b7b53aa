import { createStore } from "zustand/vanilla";

export interface Toast {
  readonly id: number;
  readonly text: string;
  /** Trouble is announced at once and stays until it is dismissed. */
  readonly isTrouble: boolean;
  readonly action?: { readonly label: string; run(): void };
}

interface Toasts {
  readonly list: readonly Toast[];
}

export const toastStore = createStore<Toasts>(() => ({ list: [] }));

let lastId = 0;

/** Says something in passing. The same text twice is said once. */
export function say(text: string, options: { isTrouble?: boolean; action?: Toast["action"] } = {}): void {
  const { isTrouble = false, action } = options;
  const toast: Toast = { id: ++lastId, text, isTrouble, ...(action ? { action } : {}) };
  toastStore.setState(({ list }) => ({ list: [...list.filter((other) => other.text !== text), toast].slice(-3) }));
}

export function dismissToast(id: number): void {
  toastStore.setState(({ list }) => ({ list: list.filter((toast) => toast.id !== id) }));
}
