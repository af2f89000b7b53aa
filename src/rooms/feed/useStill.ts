import { useEffect, useState } from "react";

/** A value once it has been the same for a while: what is dear to work out need not follow a moving finger. */
export function useStill<T>(value: T, wait_ms = 250): T {
  const [still, setStill] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setStill(() => value), wait_ms);
    return () => clearTimeout(timer);
  }, [value, wait_ms]);
  return still;
}
