import type { KeyboardEvent, PointerEvent } from "react";
import type { MapPicture } from "../../../../engine/index.ts";
import type { Box } from "../../../charts/placeLabels.ts";
import type { MapPlace } from "./MapChart.tsx";
import type { MapLayout } from "./mapLayout.ts";

interface Props {
  readonly box: Box;
  readonly layout: MapLayout;
  readonly picture: MapPicture;
  readonly cursor: MapPlace | null;
  /** The figures at the cursor, read out. */
  readonly said: string;
  onCursor(place: MapPlace): void;
  onGo(place: MapPlace): void;
}

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** A clear pad over the map: the pointer or the arrow keys (with Shift by 5) move a cursor, a press or Enter goes there. */
export function MapPad({ box, layout, picture, cursor, said, onCursor, onGo }: Props) {
  const { spacing_m, reflectorHeight_m } = picture;
  const placeOf = (e: PointerEvent<HTMLDivElement>): MapPlace => {
    const at = e.currentTarget.getBoundingClientRect();
    return layout.at([e.clientX - at.left + box.x, e.clientY - at.top + box.y]);
  };
  const press = (e: KeyboardEvent) => {
    const step = steps[e.key];
    if (step) {
      const times = e.shiftKey ? 5 : 1;
      onCursor({
        spacing_m: stepped(spacing_m, cursor?.spacing_m, step[0] * times),
        height_m: stepped(reflectorHeight_m, cursor?.height_m, step[1] * times),
      });
    } else if (e.key === "Enter" && cursor) onGo(cursor);
    else return;
    e.preventDefault();
  };
  return (
    <div
      className="mp mc-pad"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- there is no element for a cursor in two directions
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes arrow keys and Enter
      tabIndex={0}
      aria-label={`Map: arrow keys move the cursor, Enter puts the reflector there. ${said}`}
      style={{ left: box.x, top: box.y, width: box.width, height: box.height }}
      onKeyDown={press}
      onPointerMove={(e) => {
        if (e.pointerType === "mouse" || e.buttons & 1) onCursor(placeOf(e));
      }}
      onClick={(e) => {
        const at = e.currentTarget.getBoundingClientRect();
        // A press by a screen reader has no place of its own.
        if (e.detail > 0) onGo(layout.at([e.clientX - at.left + box.x, e.clientY - at.top + box.y]));
      }}
    />
  );
}

/** The next of the map's own lines that way. */
function stepped(list: readonly number[], from: number | undefined, by: number): number {
  const start = from ?? list[Math.floor(list.length / 2)]!;
  let i = 0;
  for (const [j, one] of list.entries()) if (Math.abs(one - start) < Math.abs(list[i]! - start)) i = j;
  return list[Math.max(0, Math.min(list.length - 1, i + by))]!;
}
