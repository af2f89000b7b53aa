import type { Point_px } from "./planFrame.ts";

interface Props {
  readonly at: Point_px;
  readonly onAdd: () => void;
}

/** Where a reflector would stand: a press puts it there. */
export function GhostReflector({ at, onAdd }: Props) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button cannot live inside a drawing
    <g
      className="yard-ghost"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- as above
      role="button"
      tabIndex={0}
      aria-label="Add a reflector here"
      transform={`translate(${at.x} ${at.y})`}
      onClick={onAdd}
      onKeyDown={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        onAdd();
      }}
    >
      <circle className="yard-handle-touch" r={22} />
      <circle className="yard-ghost-ring" r={7} />
      <path className="yard-ghost-plus" d="M-3.5 0h7M0-3.5v7" />
    </g>
  );
}
