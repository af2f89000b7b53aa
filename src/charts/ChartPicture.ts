import type { ReactNode } from "react";

/** What is drawn in a chart that follows a drag, in CSS px. */
export interface ChartPicture {
  /** Stays as it is from frame to frame. */
  readonly still: ReactNode;
  /** Drawn anew in every frame, over the rest. */
  readonly moving: ReactNode;
}
