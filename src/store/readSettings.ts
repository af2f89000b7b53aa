import type { Settings } from "./useSettings.ts";

const themes = ["auto", "light", "dark", "projector"] as const;
const units = ["metric", "imperial"] as const;

/** What was kept, part by part; what cannot be read is as if never chosen. */
export function readSettings(text: string | null): Settings {
  let kept: unknown = null;
  try {
    kept = JSON.parse(text ?? "null");
  } catch {
    // Not ours or cut short.
  }
  const of = (part: string): unknown =>
    typeof kept === "object" && kept !== null ? Reflect.get(kept, part) : undefined;
  return {
    theme: themes.find((theme) => theme === of("theme")) ?? "auto",
    units: units.find((unit) => unit === of("units")) ?? "metric",
  };
}
