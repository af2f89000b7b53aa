import { useEffect, useState } from "react";
import { calmPace_ms } from "../store/calmPace.ts";

/**
 * `value` itself, or, while `isMoving`, what it was a moment ago: for figures beside a drawing that is
 * being dragged, which leave the frames to the drawing.
 */
export function usePaced<T>(value: T, isMoving: boolean): T {
  const [shown, setShown] = useState(value);
  const [shownAt_ms, setShownAt] = useState(Number.NEGATIVE_INFINITY);
  if (!isMoving && shown !== value) setShown(value);
  useEffect(() => {
    if (!isMoving || shown === value) return;
    const take = () => {
      setShown(value);
      setShownAt(performance.now());
    };
    const later = setTimeout(take, Math.max(0, shownAt_ms + calmPace_ms - performance.now()));
    return () => clearTimeout(later);
  }, [value, isMoving, shown, shownAt_ms]);
  return isMoving ? shown : value;
}
