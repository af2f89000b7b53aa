import { figure } from "../../../charts/figure.ts";
import { type Box, boxesTouch } from "../../../charts/placeLabels.ts";
import { textWidth_px } from "../../../charts/textWidth.ts";
import type { Level } from "./mapLayout.ts";

/** Lines shorter than this, in px, bear no number. */
const shortest_px = 70;
/** Where along a line its number is tried. */
const tries = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9];

export interface LevelLabel {
  readonly id: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** A number on each level's longer lines, where none covers another or what is `taken`. */
export function levelLabels(
  levels: readonly Level[],
  decimals: number,
  text_px: number,
  plot: Box,
  taken: readonly Box[],
): LevelLabel[] {
  const boxes = [...taken];
  const labels: LevelLabel[] = [];
  for (const level of levels)
    for (const [i, run] of level.lines.entries()) {
      let length = 0;
      for (let k = 1; k < run.length; k++) {
        const [dx, dy] = [run[k]![0] - run[k - 1]![0], run[k]![1] - run[k - 1]![1]];
        length += Math.sqrt(dx * dx + dy * dy);
      }
      if (length < shortest_px) continue;
      const text = Number.isInteger(level.value) ? figure(level.value, 0) : figure(level.value, decimals);
      const width = textWidth_px(text, text_px);
      for (const part of tries) {
        const [x, y] = run[Math.round(part * (run.length - 1))]!;
        const box = { x: x - width / 2 - 3, y: y - 0.6 * text_px, width: width + 6, height: 1.2 * text_px };
        const isIn =
          box.x >= plot.x &&
          box.y >= plot.y &&
          box.x + box.width <= plot.x + plot.width &&
          box.y + box.height <= plot.y + plot.height;
        if (!isIn || boxes.some((other) => boxesTouch(other, box))) continue;
        boxes.push(box);
        labels.push({ id: `${level.value} ${i}`, text, x, y });
        break;
      }
    }
  return labels;
}
