import { type RefObject, useEffect, useState } from "react";
import { Icon } from "../ui/Icon.tsx";
import type { HeadlineFigure } from "./headlineFigures.ts";
import { useAnswerLabel } from "./useAnswerLabel.ts";

interface Props {
  readonly figures: readonly HeadlineFigure[];
  /** Where the figures stand in full: the strip shows while they are out of sight. */
  readonly full: RefObject<HTMLElement | null>;
}

const names = { forward: "forward", back: "F/B", rear: "worst", feed: "SWR" } as const;

/**
 * On a page that scrolls, the figures in one line at the top of the window, so that a thumb on the Yard's handles sees
 * what it does. A repetition for the eye only: screen readers have the headline and the announcer.
 */
export function Glance({ figures, full }: Props) {
  const [isAway, setAway] = useState(false);
  useEffect(() => {
    const element = full.current;
    if (!element || typeof IntersectionObserver === "undefined") return;
    const watch = new IntersectionObserver(([entry]) => setAway(entry !== undefined && !entry.isIntersecting));
    watch.observe(element);
    return () => watch.disconnect();
  }, [full]);

  const label = useAnswerLabel();
  if (!isAway) return null;
  return (
    <div className="glance" aria-hidden="true">
      {label && <Icon name={label.icon} />}
      {figures.map((one) => (
        <span key={one.id} className={one.isHot ? "glance__hot" : ""}>
          {names[one.id]}{" "}
          <b>
            {one.value}
            {one.id === "forward" ? ` ${one.unit}` : ""}
          </b>
        </span>
      ))}
    </div>
  );
}
