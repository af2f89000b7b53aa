import { settingsStore } from "../store/useSettings.ts";

/**
 * Puts the theme on the page and keeps it there: "auto" follows the system, also when that changes.
 * @returns a function that stops following
 */
export function applyTheme(root: HTMLElement): () => void {
  const system = typeof matchMedia === "function" ? matchMedia("(prefers-color-scheme: dark)") : null;
  const apply = () => {
    const { theme } = settingsStore.getState();
    root.dataset.theme = theme === "auto" ? (system?.matches ? "dark" : "light") : theme;
  };
  apply();
  const stop = settingsStore.subscribe(apply);
  system?.addEventListener("change", apply);
  return () => {
    stop();
    system?.removeEventListener("change", apply);
  };
}
