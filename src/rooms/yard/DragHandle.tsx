import type { KeyboardEvent, PointerEvent, ReactNode } from "react";
import { useEffect, useRef } from "react";
import type { Point_px } from "./planFrame.ts";

export interface DragHandlers {
  /** A drag begins: freeze the scale. */
  readonly onDragStart: () => void;
  /** Where the handle would be. `fine`: Shift is down, and the handle follows at a tenth of the pointer's pace. */
  readonly onDrag: (point: Point_px, fine: boolean) => void;
  readonly onDragEnd: () => void;
  /** Escape: put things back as they were at `onDragStart`. */
  readonly onDragCancel: () => void;
  /** One arrow key: ±1, or ±10 with Shift or the page keys. */
  readonly onStep: (presses: number) => void;
  /** The run of arrow keys is over. */
  readonly onSettle: () => void;
}

interface Props extends DragHandlers {
  readonly at: Point_px;
  readonly label: string;
  readonly now: number;
  readonly least: number;
  readonly most: number;
  /** The value in words. */
  readonly valueText: string;
  readonly cursor: "grab" | "ns-resize" | "move";
  readonly children: ReactNode;
}

/** Half of the 44 px that a finger needs. */
const touch_px = 22;

/** Something in a drawing that can be dragged, or moved with arrow keys. A slider to a screen reader. */
export function DragHandle(props: Props) {
  const { at, label, now, least, most, valueText, cursor, children } = props;
  const drag = useRef<{ id: number; lastX: number; lastY: number; point: Point_px } | null>(null);
  const latest = useRef(props);
  useEffect(() => {
    latest.current = props;
  });

  const stop = (how: "end" | "cancel") => {
    if (!drag.current) return;
    drag.current = null;
    if (how === "end") latest.current.onDragEnd();
    else latest.current.onDragCancel();
  };

  useEffect(() => {
    // Escape must reach a drag wherever the focus is, and must not close a dialog on its way.
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (event.key !== "Escape" || !drag.current) return;
      event.preventDefault();
      event.stopPropagation();
      drag.current = null;
      latest.current.onDragCancel();
    };
    window.addEventListener("keydown", onKey, true);
    return () => window.removeEventListener("keydown", onKey, true);
  }, []);

  const group = useRef<SVGGElement>(null);
  useEffect(() => {
    const element = group.current;
    // Browsers do not all honour touch-action inside a drawing: without this the page scrolls and ends the drag.
    const keepPage = (event: TouchEvent) => event.preventDefault();
    element?.addEventListener("touchstart", keepPage, { passive: false });
    return () => element?.removeEventListener("touchstart", keepPage);
  }, []);

  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0 || drag.current) return;
    event.preventDefault();
    event.currentTarget.focus({ preventScroll: true });
    event.currentTarget.setPointerCapture?.(event.pointerId);
    drag.current = { id: event.pointerId, lastX: event.clientX, lastY: event.clientY, point: at };
    props.onDragStart();
  };

  const onPointerMove = (event: PointerEvent<SVGGElement>) => {
    const going = drag.current;
    if (!going || event.pointerId !== going.id) return;
    const pace = event.shiftKey ? 0.1 : 1;
    going.point = {
      x: going.point.x + (event.clientX - going.lastX) * pace,
      y: going.point.y + (event.clientY - going.lastY) * pace,
    };
    going.lastX = event.clientX;
    going.lastY = event.clientY;
    props.onDrag(going.point, event.shiftKey);
  };

  const onPointerDone = (event: PointerEvent<SVGGElement>) => {
    if (drag.current?.id === event.pointerId) stop("end");
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const direction = stepOf(event.key);
    if (direction === 0 || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    props.onStep(event.shiftKey && Math.abs(direction) === 1 ? direction * 10 : direction);
  };

  return (
    <g
      ref={group}
      className="yard-handle"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- an input cannot live inside a drawing
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuenow={now}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuetext={valueText}
      style={{ cursor, touchAction: "none" }}
      transform={`translate(${at.x} ${at.y})`}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerDone}
      onPointerCancel={onPointerDone}
      onLostPointerCapture={onPointerDone}
      onKeyDown={onKeyDown}
      onBlur={props.onSettle}
    >
      <circle className="yard-handle-touch" r={touch_px} />
      {children}
    </g>
  );
}

function stepOf(key: string): number {
  switch (key) {
    case "ArrowUp":
    case "ArrowRight":
      return 1;
    case "ArrowDown":
    case "ArrowLeft":
      return -1;
    case "PageUp":
      return 10;
    case "PageDown":
      return -10;
    default:
      return 0;
  }
}
