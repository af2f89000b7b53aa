import { useMemo } from "react";
import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";
import { drivenOf, limits, reflectorOf, wavelength_m } from "../../../engine/index.ts";
import type { Units } from "../../store/useSettings.ts";
import { formatQuantity } from "../../ui/quantity/formatQuantity.ts";
import { DragHandle } from "./DragHandle.tsx";
import { ElementMark } from "./ElementMark.tsx";
import { elementName } from "./elementName.ts";
import { firstThat } from "./firstThat.ts";
import { headingOf } from "./heading.ts";
import { LabelText } from "./LabelText.tsx";
import type { ViewActions } from "./PlanView.tsx";
import type { LabelWish } from "./placeLabels.ts";
import { boxAround, boxesAlong, isCrowded, placeLabels } from "./placeLabels.ts";
import type { Point_px } from "./planFrame.ts";
import { spacingText } from "./planLabels.ts";
import type { SideFrame } from "./sideFrame.ts";
import { fitSideFrame, footOf, heightAt, toSideSheet } from "./sideFrame.ts";
import { snapGrid_m, snapLength } from "./snapLength.ts";
import type { SheetSize } from "./useSheetSize.ts";
import { sheetHeight_px } from "./useSheetSize.ts";

interface Props extends ViewActions {
  readonly plan: SavedPlan;
  /** The plan that the scale is fitted to: during a drag the one it began with, so that the scale does not jump. */
  readonly fitTo: SavedPlan;
  readonly units: Units;
  readonly size: SheetSize;
  readonly onHeight: (element: ElementPlan, height_m: number) => void;
}

/** The yard from the side, forward to the right: masts to one scale on the ground line, tips to drag. */
export function SideView(props: Props) {
  const { plan, fitTo, units, size, onHeight, onDragStart, onDragEnd, onDragCancel, onSettle } = props;

  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  const height_px = sheetHeight_px(size, 0.4, 0.145, 124);
  const frame = useMemo(() => fitSideFrame(fitTo, size.width_px, height_px), [fitTo, size.width_px, height_px]);
  const heading = headingOf(plan);
  const wavelength = wavelength_m(plan.frequency_MHz);
  const tip = (element: ElementPlan) => toSideSheet(frame, element.forward_m, footOf(element) + element.height_m);
  const foot = (element: ElementPlan) => toSideSheet(frame, element.forward_m, footOf(element));

  const drag = { onDragStart, onDragEnd, onDragCancel, onSettle };

  const tipTo = (element: ElementPlan, point: Point_px, fine: boolean) => {
    // Held inside the sheet until the release re-fits the scale.
    const seen_px = Math.max(point.y, 10);
    onHeight(element, snapLength(heightAt(frame, seen_px) - footOf(element), units, fine));
  };

  /** Base line of what is written along the foot of the sheet. */
  const row = height_px - 4;
  const ground = frame.groundY_px;
  const sheet = { width: frame.width_px, height: ground - 4 };
  const obstacles = plan.elements.flatMap((element) => [
    boxAround(tip(element), 9),
    ...boxesAlong(tip(element), foot(element)),
  ]);
  // Where there is little room the mark alone tells which is which, as in the view from above.
  const write = (name: typeof elementName) => {
    const wishes = plan.elements.map(
      (element): LabelWish => ({
        id: element.id,
        text: `${name(plan, element)} ${formatQuantity(element.height_m, "length_m", units)}`.trim(),
        anchor: tip(element),
        gap_px: 13,
        // Forward is right: the front mast's label goes ahead of it, the others' behind.
        prefer: isForemost(plan, element) ? ["right", "above-right", "above"] : ["left", "above-left", "above"],
      }),
    );
    return { wishes, labels: placeLabels(wishes, obstacles, sheet, size.font_px) };
  };
  const { wishes, labels } = firstThat(
    [() => write(elementName), () => write(() => "")],
    (written) => !isCrowded(written.labels, obstacles, sheet),
  );

  return (
    <svg
      className="yard-drawing"
      width={frame.width_px}
      height={height_px}
      viewBox={`0 0 ${frame.width_px} ${height_px}`}
      role="presentation"
    >
      <rect className="yard-soil" x={0} y={ground} width={frame.width_px} height={7} />
      {plan.elements.map((element) => (
        <SideRadials key={element.id} frame={frame} element={element} />
      ))}
      <line className="yard-ground" x1={0} y1={ground} x2={frame.width_px} y2={ground} />
      {plan.elements.map((element) => (
        <line
          key={element.id}
          className="yard-mast"
          x1={foot(element).x}
          y1={foot(element).y}
          x2={tip(element).x}
          y2={tip(element).y}
        />
      ))}

      {driven && reflector && (
        <SideDimension
          from_px={foot(reflector).x}
          to_px={foot(driven).x}
          y={ground + 13}
          width_px={frame.width_px}
          font_px={size.font_px}
          text={spacingText(Math.abs(driven.forward_m - reflector.forward_m), plan.frequency_MHz, units)}
        />
      )}
      <g className="yard-aft">
        <path d={`M15 ${row - 4.5}H3m4 -4l-4 4l4 4`} />
        <text className="yard-label yard-soft" x={20} y={row}>
          {formatQuantity(heading + 180, "bearing_deg", units)}
        </text>
      </g>
      <g className="yard-fore">
        <path d={`M${frame.width_px - 15} ${row - 4.5}h12m-4 -4l4 4l-4 4`} />
        <text className="yard-label yard-hot" x={frame.width_px - 20} y={row} textAnchor="end">
          {formatQuantity(heading, "bearing_deg", units)}
        </text>
      </g>

      {labels.map((label) => (
        <LabelText key={label.id} label={label} tieTo={wishes.find((wish) => wish.id === label.id)!.anchor} />
      ))}
      {plan.elements.map((element) => (
        <DragHandle
          key={element.id}
          at={tip(element)}
          label={`Length of ${nameWithArticle(elementName(plan, element))}`}
          now={Number(element.height_m.toFixed(4))}
          least={Number((limits.height_wl.least * wavelength).toFixed(4))}
          most={Number(Math.min(limits.length_m, limits.height_wl.most * wavelength).toFixed(4))}
          valueText={`${formatQuantity(element.height_m, "length_m", units)}, ${(element.height_m / wavelength).toFixed(3)} wavelengths`}
          cursor="ns-resize"
          {...drag}
          onDrag={(point, fine) => tipTo(element, point, fine)}
          onStep={(presses) =>
            onHeight(element, snapLength(element.height_m + presses * snapGrid_m(units, false), units, false))
          }
        >
          <ElementMark isFed={element.base.kind === "fed"} />
        </DragHandle>
      ))}
    </svg>
  );
}

function SideRadials({ frame, element }: { readonly frame: SideFrame; readonly element: ElementPlan }) {
  const { count, length_m, height_m } = element.radials;
  if (count === 0) return null;
  const from = toSideSheet(frame, element.forward_m - length_m, height_m);
  const to = toSideSheet(frame, element.forward_m + length_m, height_m);
  // Wires in the soil or on it would vanish behind the ground line at this scale: keep them two pixels off it.
  const y = height_m < 0 ? Math.max(from.y, frame.groundY_px + 3) : Math.min(from.y, frame.groundY_px - 2);
  return <line className={height_m < 0 ? "yard-buried" : "yard-laid"} x1={from.x} y1={y} x2={to.x} y2={y} />;
}

interface SideDimensionProps {
  readonly from_px: number;
  readonly to_px: number;
  readonly y: number;
  readonly width_px: number;
  readonly font_px: number;
  readonly text: string;
}

function SideDimension({ from_px, to_px, y, width_px, font_px, text }: SideDimensionProps) {
  const half = text.length * font_px * 0.28 + 2;
  // Between the two bearings that stand on the same line.
  const least = Math.min(width_px / 2, half + 4.8 * font_px);
  const middle = Math.min(Math.max((from_px + to_px) / 2, least), width_px - least);
  return (
    <g className="yard-dimension">
      <path d={`M${from_px} ${y - 4}v8M${to_px} ${y - 4}v8M${from_px} ${y}H${to_px}`} />
      <text className="yard-label" x={middle} y={y + font_px + 3} textAnchor="middle">
        {text}
      </text>
    </g>
  );
}

function isForemost(plan: SavedPlan, element: ElementPlan): boolean {
  return plan.elements.every((other) => other.id === element.id || other.forward_m <= element.forward_m);
}

function nameWithArticle(name: string): string {
  return name === "driven" ? "the driven element" : name === "reflector" ? "the reflector" : name;
}
