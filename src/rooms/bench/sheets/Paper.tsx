import type { ReactNode } from "react";
import { createPortal } from "react-dom";
import type { PaperSize } from "./PaperSize.ts";
import "./paper.css";

interface Props {
  readonly size: PaperSize;
  readonly children: ReactNode;
}

/** What goes to the printer instead of the page, for as long as it is mounted. Never on the screen. */
export function Paper({ size, children }: Props) {
  return createPortal(
    <div className="paper" data-size={size}>
      {children}
    </div>,
    document.body,
  );
}
