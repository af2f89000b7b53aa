import type { DesignTrace } from "./DesignTrace.ts";

/** Class names of a trace's line: see traces.css. */
export function traceClass({ role, style }: Pick<DesignTrace, "role" | "style">): string {
  return role === "live" ? "tr-line tr-live" : `tr-line tr-pin tr-dash-${style % 4}`;
}
