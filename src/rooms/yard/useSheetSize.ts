import { useLayoutEffect, useRef, useState } from "react";

export interface SheetSize {
  readonly width_px: number;
  /** Size of small text, which follows the person's and the theme's settings. */
  readonly font_px: number;
}

const before: SheetSize = { width_px: 360, font_px: 13 };

/** Measures the element a drawing lives in, so that the drawing can be laid out in real pixels. */
export function useSheetSize<E extends HTMLElement>() {
  const ref = useRef<E>(null);
  const [size, setSize] = useState(before);

  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const width_px = Math.round(element.clientWidth);
      const font_px = Math.max(13, Number.parseFloat(getComputedStyle(element).fontSize) || 13);
      // Nothing has a width where there is no layout.
      if (width_px > 0)
        setSize((old) => (old.width_px === width_px && old.font_px === font_px ? old : { width_px, font_px }));
    };
    measure();
    if (typeof ResizeObserver === "undefined") return;
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);

  return [ref, size] as const;
}
