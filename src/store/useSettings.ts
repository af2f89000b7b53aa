import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { readSettings } from "./readSettings.ts";
import { pageShelf } from "./shelf.ts";

/** "projector": high contrast, larger text and strokes, for a room. */
export type Theme = "auto" | "light" | "dark" | "projector";
export type Units = "metric" | "imperial";

export interface Settings {
  readonly theme: Theme;
  readonly units: Units;
}

const name = "settings";

export const settingsStore = createStore<Settings>(() => readSettings(pageShelf.read(name)));
// A choice that cannot be kept still holds for this visit; the plan's own saving says that nothing is kept.
settingsStore.subscribe((settings) => void pageShelf.write(name, JSON.stringify(settings)));

/** Reads how the person wants the page: `useSettings((s) => s.units)`; changed by `settingsStore.setState`. */
export function useSettings<T>(select: (state: Settings) => T): T {
  return useStore(settingsStore, select);
}
