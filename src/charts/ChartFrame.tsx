import { type ReactNode, type RefObject, useId } from "react";
import "./ChartFrame.css";
import "./traces.css";
import { FigureTable, type FigureTableProps } from "./FigureTable.tsx";

interface Props {
  readonly title: string;
  /** What is drawn, in what unit, how distorted: stands beside the title. */
  readonly note: string;
  /** The whole chart in a sentence or two, for who does not see it. */
  readonly summary: string;
  readonly width_px: number;
  readonly height_px: number;
  readonly plotRef: RefObject<HTMLDivElement | null>;
  /** The answer belongs to an earlier plan. */
  readonly stale: boolean;
  /** Said over the empty plot while there is nothing to draw. */
  readonly waiting: string | null;
  readonly table: FigureTableProps;
  /** The drawing, in CSS px. */
  readonly children: ReactNode;
  /**
   * What a drag draws anew in every frame. It lies over all else in a drawing of its own, so that the browser need not
   * paint the rest again with it.
   */
  readonly moving?: ReactNode;
  /** What lies over the drawing and takes pointer and keys. */
  readonly over?: ReactNode;
  /** What stands under the drawing. */
  readonly below?: ReactNode;
}

export const staleWords = "from an earlier plan";

/** What every chart has around it: title, a picture with a text, a mark when it is out of date, its figures as a table. */
export function ChartFrame(p: Props) {
  const hatch = useId();
  const size = { width: p.width_px, height: p.height_px, viewBox: `0 0 ${p.width_px} ${p.height_px}` };
  const veil = p.stale && (
    <>
      <pattern id={hatch} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(60)">
        <path className="cf-hatch" d="M0,0V9" />
      </pattern>
      <rect width={p.width_px} height={p.height_px} fill={`url(#${hatch})`} opacity={0.35} />
    </>
  );
  return (
    <figure className={p.stale ? "cf cf-stale" : "cf"}>
      <figcaption className="cf-caption">
        <span className="cf-title">{p.title}</span>
        <span>{p.note}</span>
      </figcaption>
      <div className="cf-plot" ref={p.plotRef} style={{ height: p.height_px }}>
        <svg
          className="cf-svg"
          role="img"
          aria-label={p.stale ? `${p.summary} These figures are ${staleWords}.` : p.summary}
          {...size}
        >
          {p.children}
          {!p.moving && veil}
        </svg>
        {p.over}
        {p.moving && (
          <svg className="cf-moving" aria-hidden="true" {...size}>
            {p.moving}
            {veil}
          </svg>
        )}
        {p.stale && <p className="cf-stale-words">{staleWords}</p>}
        {p.waiting && <p className="cf-said">{p.waiting}</p>}
      </div>
      <div className="cf-foot">
        {p.below}
        <FigureTable {...p.table} />
      </div>
    </figure>
  );
}
