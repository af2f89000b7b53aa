import { type RefObject, useLayoutEffect, useRef, useState } from "react";

export interface ChartSize {
  readonly ref: RefObject<HTMLDivElement | null>;
  /** Inner width of the element, in CSS px, whole. */
  readonly width_px: number;
  /** Size of the chart's text, in CSS px: it follows the page's, and layouts leave room by it. */
  readonly text_px: number;
}

/** What a chart assumes until it has been measured, and where nothing can be measured. */
const unmeasured = { width_px: 360, text_px: 13 };

/**
 * Measures the element a chart is drawn in, so that one unit of the drawing is one CSS px and text is never scaled.
 * The first measure happens before the first paint.
 */
export function useChartSize(): ChartSize {
  const ref = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState(unmeasured);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const width_px = Math.floor(element.clientWidth) || unmeasured.width_px;
      const text_px = Number.parseFloat(getComputedStyle(element).fontSize) || unmeasured.text_px;
      setSize((old) => (old.width_px === width_px && old.text_px === text_px ? old : { width_px, text_px }));
    };
    measure();
    if (typeof ResizeObserver === "undefined") return;
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { ref, ...size };
}
