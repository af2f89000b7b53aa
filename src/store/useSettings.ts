import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

/** "projector": high contrast, larger text and strokes, for a room. */
export type Theme = "auto" | "light" | "dark" | "projector";
export type Units = "metric" | "imperial";

export interface Settings {
  readonly theme: Theme;
  readonly units: Units;
}

export const settingsStore = createStore<Settings>(() => ({ theme: "auto", units: "metric" }));

/** Reads how the person wants the page: `useSettings((s) => s.units)`. */
export function useSettings<T>(select: (state: Settings) => T): T {
  return useStore(settingsStore, select);
}
