import { memo } from "react";
import type { Mark } from "./Mark.ts";

const sides = { start: "", middle: " tr-middle", end: " tr-end" } as const;
const kinds = {
  number: "tr-number",
  path: "tr-number tr-path-number",
  live: "tr-number tr-live-number",
  word: "tr-word",
} as const;

/** The numbers and words of a chart's sheet. */
export const MarkText = memo(
  function MarkText({ marks }: { readonly marks: readonly Mark[] }) {
    return marks.map((m) => (
      <text key={m.id} className={kinds[m.kind] + sides[m.side]} x={m.x.toFixed(1)} y={m.y.toFixed(1)}>
        {m.text}
      </text>
    ));
  },
  // The list is put together anew where a mast moves; mostly it is the same marks that find room.
  ({ marks: before }, { marks: now }) => before.length === now.length && now.every((mark, i) => mark === before[i]),
);
