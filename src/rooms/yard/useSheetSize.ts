import { useLayoutEffect, useRef, useState } from "react";

export interface SheetSize {
  readonly width_px: number;
  /** Height of the window: a drawing should leave room for the figures under it. */
  readonly window_px: number;
  /** Size of small text, which follows the person's and the theme's settings. */
  readonly font_px: number;
}

const before: SheetSize = { width_px: 360, window_px: 900, font_px: 13 };

/** Measures the element a drawing lives in, so that the drawing can be laid out in real pixels. */
export function useSheetSize<E extends HTMLElement>() {
  const ref = useRef<E>(null);
  const [size, setSize] = useState(before);

  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const now: SheetSize = {
        width_px: Math.round(element.clientWidth),
        // Not innerHeight: that changes as a phone's address bar comes and goes, and the drawing would twitch.
        window_px: document.documentElement.clientHeight,
        font_px: Math.max(13, Number.parseFloat(getComputedStyle(element).fontSize) || 13),
      };
      // Nothing has a size where there is no layout.
      if (now.width_px > 0 && now.window_px > 0)
        setSize((old) =>
          old.width_px === now.width_px && old.window_px === now.window_px && old.font_px === now.font_px ? old : now,
        );
    };
    measure();
    window.addEventListener("resize", measure);
    const observer = typeof ResizeObserver === "undefined" ? null : new ResizeObserver(measure);
    observer?.observe(element);
    return () => {
      window.removeEventListener("resize", measure);
      observer?.disconnect();
    };
  }, []);

  return [ref, size] as const;
}

/** A drawing's height: a share of its width, no more than a share of the window, and never too small to use. */
export function sheetHeight_px(size: SheetSize, ofWidth: number, ofWindow: number, least_px: number): number {
  return Math.round(Math.max(least_px, Math.min(size.width_px * ofWidth, size.window_px * ofWindow)));
}
