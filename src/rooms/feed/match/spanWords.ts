import type { Span } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";

/** How much spectrum a match serves: 120 kHz, or more where the band looked at ends first. */
export function spanWords(span: Span | undefined): string {
  if (!span) return "none";
  const open = span.openBelow || span.openAbove;
  return `${open ? "over " : ""}${figure(span.width_kHz, 0)} kHz`;
}
