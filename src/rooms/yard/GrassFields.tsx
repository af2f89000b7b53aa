import { useId } from "react";
import type { ElementPlan } from "../../../engine/index.ts";
import { overlapOfFields } from "./geometryWarnings.ts";
import type { PlanFrame, Point_px } from "./planFrame.ts";

interface Props {
  readonly frame: PlanFrame;
  readonly elements: readonly ElementPlan[];
  /** Where an element stands on the sheet. */
  readonly place: (element: ElementPlan) => Point_px;
}

/** The ground that radials cover, and where two fields of them overlap. */
export function GrassFields({ frame, elements, place }: Props) {
  const clip = useId();
  const disc = (element: ElementPlan) => {
    const { x, y } = place(element);
    return { cx: x, cy: y, r: element.radials.count > 0 ? element.radials.length_m * frame.pxPerM : 0 };
  };
  return (
    <>
      {elements.map((element) => (
        <circle key={element.id} className="yard-field" {...disc(element)} />
      ))}
      {overlaps(elements).map(([one, other], i) => (
        <g key={`${one.id} ${other.id}`}>
          <clipPath id={`${clip}${i}`}>
            <circle {...disc(one)} />
          </clipPath>
          <circle className="yard-overlap" {...disc(other)} clipPath={`url(#${clip}${i})`} />
        </g>
      ))}
    </>
  );
}

function overlaps(elements: readonly ElementPlan[]): (readonly [ElementPlan, ElementPlan])[] {
  return elements.flatMap((one, i) =>
    elements.slice(i + 1).flatMap((other) => (overlapOfFields(one, other) > 0 ? [[one, other] as const] : [])),
  );
}
