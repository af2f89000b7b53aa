import type { Mark } from "./Mark.ts";
import { type Box, boxesTouch } from "./placeLabels.ts";
import { textWidth_px } from "./textWidth.ts";

/** The marks that fit, each with the box it takes: one that leaves the drawing's sides or covers an earlier one or what is `taken` is dropped. */
export function fitMarks(
  marks: readonly Mark[],
  text_px: number,
  width: number,
  taken: readonly Box[] = [],
): { marks: Mark[]; keepOut: Box[] } {
  const kept: Mark[] = [];
  const keepOut: Box[] = [...taken];
  for (const m of marks) {
    const w = textWidth_px(m.text, text_px);
    const x = m.side === "middle" ? m.x - w / 2 : m.side === "end" ? m.x - w : m.x;
    const box = { x, y: m.y - 0.6 * text_px, width: w, height: 1.2 * text_px };
    if (x < -2 || x + w > width + 2 || keepOut.some((k) => boxesTouch(k, box))) continue;
    kept.push(m);
    keepOut.push(box);
  }
  return { marks: kept, keepOut };
}
