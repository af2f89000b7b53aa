import type { KeyboardEvent, PointerEvent } from "react";
import "./MarkerPad.css";
import type { Box } from "./placeLabels.ts";
import type { Spot } from "./tracePath.ts";

interface Props {
  readonly label: string;
  /** Where the pad lies over the drawing, in px. */
  readonly box: Box;
  /** Rises to the right (and clockwise on a compass). */
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** What the value means, read out. */
  readonly valueText: string;
  /** A point of the drawing, in its px, as a value; NaN when it means none. */
  valueAt(spot: Spot): number;
  /** Where the Home and End keys lead. */
  readonly home: number;
  readonly end: number;
  /** Which way the up arrow counts; ahead of a half circle, up is back toward the middle. */
  readonly up?: 1 | -1;
  /** Past the last value comes the first. */
  readonly wraps?: boolean;
  onValue(value: number): void;
  /** The marker has been let go, or the focus has left it. */
  onSettle?(): void;
}

const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 };
const upward: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

/** A clear pad over a drawing that moves its marker: press or drag, arrow keys (with Shift by 5), Page, Home, End. */
export function MarkerPad(p: Props) {
  const set = (value: number) => {
    if (!Number.isFinite(value)) return;
    const span = p.max - p.min + 1;
    p.onValue(p.wraps ? p.min + ((((value - p.min) % span) + span) % span) : Math.min(p.max, Math.max(p.min, value)));
  };
  const take = (e: PointerEvent<HTMLDivElement>) => {
    const at = e.currentTarget.getBoundingClientRect();
    set(Math.round(p.valueAt([e.clientX - at.left + p.box.x, e.clientY - at.top + p.box.y])));
  };
  const press = (e: KeyboardEvent) => {
    const up = upward[e.key];
    const step = up === undefined ? steps[e.key] : up * (p.up ?? 1);
    if (step !== undefined) set(Math.round(p.value) + step * (e.shiftKey ? 5 : 1));
    else if (e.key === "Home") set(p.home);
    else if (e.key === "End") set(p.end);
    else return;
    e.preventDefault();
  };
  return (
    <div
      className="mp"
      role="slider"
      tabIndex={0}
      aria-label={p.label}
      aria-valuemin={p.min}
      aria-valuemax={p.max}
      aria-valuenow={p.value}
      aria-valuetext={p.valueText}
      style={{ left: p.box.x, top: p.box.y, width: p.box.width, height: p.box.height }}
      onKeyDown={press}
      onPointerDown={(e) => {
        e.currentTarget.setPointerCapture?.(e.pointerId);
        take(e);
      }}
      onPointerMove={(e) => {
        if (e.buttons & 1) take(e);
      }}
      onPointerUp={() => p.onSettle?.()}
      onBlur={() => p.onSettle?.()}
    />
  );
}
