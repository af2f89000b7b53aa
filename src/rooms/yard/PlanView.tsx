import { useMemo } from "react";
import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";
import { drivenOf, limits, reflectorOf, withReflector } from "../../../engine/index.ts";
import type { Units } from "../../store/useSettings.ts";
import { formatQuantity } from "../../ui/quantity/formatQuantity.ts";
import { CompassRing } from "./CompassRing.tsx";
import { compassLetters } from "./compassLetters.ts";
import type { RadialCurrents } from "./currentLines.ts";
import { DragHandle } from "./DragHandle.tsx";
import { ElementMark } from "./ElementMark.tsx";
import { elementName } from "./elementName.ts";
import { firstThat } from "./firstThat.ts";
import { GhostReflector } from "./GhostReflector.tsx";
import { GrassFields } from "./GrassFields.tsx";
import { headingOf } from "./heading.ts";
import { LabelText } from "./LabelText.tsx";
import { PlanDimension } from "./PlanDimension.tsx";
import type { Box_px } from "./placeLabels.ts";
import { boxAround, isCrowded, placeLabels, textWidth_px } from "./placeLabels.ts";
import type { Point_px } from "./planFrame.ts";
import { bearingFromPivot, fitPlanFrame, onRing, toGround, toSheet } from "./planFrame.ts";
import { dimensionLine, planLabels, spacingText } from "./planLabels.ts";
import { RadialsFromAbove } from "./RadialsFromAbove.tsx";
import { scaleBar } from "./scaleBar.ts";
import { snapGrid_m, snapLength } from "./snapLength.ts";
import type { SheetSize } from "./useSheetSize.ts";
import { sheetHeight_px } from "./useSheetSize.ts";

export interface ViewActions {
  readonly onDragStart: () => void;
  readonly onDragEnd: () => void;
  readonly onDragCancel: () => void;
  readonly onSettle: () => void;
}

interface Props extends ViewActions {
  readonly plan: SavedPlan;
  /** The plan that the scale is fitted to: during a drag the one it began with, so that the scale does not jump. */
  readonly fitTo: SavedPlan;
  readonly units: Units;
  readonly size: SheetSize;
  /** Currents in the radials of just this plan; null while they are not known. */
  readonly currents: readonly RadialCurrents[] | null;
  readonly onMove: (element: ElementPlan, forward_m: number) => void;
  readonly onTurn: (heading_deg: number) => void;
  readonly onAddReflector: () => void;
}

/** The yard from above, true north up. The beam's end rides on a compass ring; elements slide along the beam. */
export function PlanView(props: Props) {
  const {
    plan,
    fitTo,
    units,
    size,
    currents,
    onMove,
    onTurn,
    onAddReflector,
    onDragStart,
    onDragEnd,
    onDragCancel,
    onSettle,
  } = props;

  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  const ghost = reflector ? undefined : reflectorOf(withReflector(plan));
  const height_px = sheetHeight_px(size, 1, 0.3, 230);
  const isGhostly = ghost !== undefined;
  const frame = useMemo(
    () => fitPlanFrame(isGhostly ? withReflector(fitTo) : fitTo, size.width_px, height_px),
    [isGhostly, fitTo, size.width_px, height_px],
  );
  const heading = headingOf(plan);
  const place = (element: ElementPlan) => toSheet(frame, heading, element.forward_m, element.left_m);

  const drag = { onDragStart, onDragEnd, onDragCancel, onSettle };

  const moveTo = (element: ElementPlan, point: Point_px, fine: boolean) => {
    if (!driven) return;
    // Held inside the sheet: the scale waits for the release, and what is dragged must stay in sight till then.
    const seen = { x: clamp(point.x, 12, frame.width_px - 12), y: clamp(point.y, 12, frame.height_px - 12) };
    const behind_m = driven.forward_m - toGround(frame, heading, seen).forward_m;
    onMove(element, driven.forward_m - snapLength(behind_m, units, fine));
  };

  const turnTo = (point: Point_px, fine: boolean) => {
    const bearing = bearingFromPivot(frame, point);
    if (bearing !== null) onTurn(fine ? Math.round(bearing * 10) / 10 : Math.round(bearing));
  };

  const bar = scaleBar(frame.pxPerM, units, Math.min(110, size.width_px / 4));
  const barAt = { x: 8, y: height_px - 10 };
  const letters = compassLetters(frame, heading);
  const fixed: Box_px[] = [
    { x: barAt.x, y: barAt.y - 22, width: bar.length_px + 4, height: 26 },
    ...letters.map(({ at }) => boxAround(at, 9)),
  ];
  const sheet = { width: frame.width_px, height: height_px };
  const write = (short: boolean) => {
    const { wishes, obstacles } = planLabels(frame, plan, units, fixed, short, ghost);
    // One as long as half the sheet only gets in the way, and the fields say the same.
    const fitting = wishes.filter(
      ({ id, text }) => id !== "radials" || textWidth_px(text, size.font_px) < size.width_px * 0.5,
    );
    return { wishes, obstacles, labels: placeLabels(fitting, obstacles, sheet, size.font_px) };
  };
  const { wishes, labels } = firstThat(
    [() => write(false), () => write(true)],
    (written) => !isCrowded(written.labels, written.obstacles, sheet),
  );
  const end = onRing(frame, heading);
  const tail = driven && place(driven);

  return (
    <svg
      className="yard-drawing"
      width={frame.width_px}
      height={height_px}
      viewBox={`0 0 ${frame.width_px} ${height_px}`}
      role="presentation"
    >
      <CompassRing frame={frame} heading={heading} />
      <GrassFields frame={frame} elements={plan.elements} place={place} />
      <RadialsFromAbove frame={frame} heading_deg={heading} plan={plan} currents={currents} />

      {driven && reflector && <PlanDimension {...dimensionLine(frame, heading, driven, reflector)} />}
      {tail && <line className="yard-beam" x1={tail.x} y1={tail.y} x2={end.x} y2={end.y} />}

      <g className="yard-bar">
        <path d={`M${barAt.x} ${barAt.y - 5}v5h${bar.length_px.toFixed(1)}v-5`} />
        <text className="yard-label yard-soft" x={barAt.x + 5} y={barAt.y - 7}>
          {bar.label}
        </text>
      </g>

      {labels.map((label) => (
        <LabelText
          key={label.id}
          label={label}
          tieTo={wishes.find((wish) => wish.id === label.id)!.anchor}
          className={
            label.id === "heading" || label.id === "ghost"
              ? "yard-hot"
              : label.id.startsWith("radials")
                ? "yard-soft"
                : ""
          }
        />
      ))}

      {ghost && driven && <GhostReflector at={place(ghost)} onAdd={onAddReflector} />}

      {plan.elements.map((element) =>
        element.id === driven?.id ? (
          <g key={element.id} transform={`translate(${place(element).x} ${place(element).y})`}>
            <ElementMark isFed />
          </g>
        ) : (
          <DragHandle
            key={element.id}
            at={place(element)}
            label={element.id === reflector?.id ? "Spacing of the reflector" : `Place of ${elementName(plan, element)}`}
            now={round(behind(driven, element), 4)}
            least={-limits.position_m}
            most={limits.position_m}
            valueText={placeInWords(plan, driven, element, units)}
            cursor="grab"
            {...drag}
            onDrag={(point, fine) => moveTo(element, point, fine)}
            onStep={(presses) => {
              const grid = snapGrid_m(units, false);
              const next = snapLength(behind(driven, element) + presses * grid, units, false);
              onMove(element, (driven?.forward_m ?? 0) - next);
            }}
          >
            <ElementMark isFed={element.base.kind === "fed"} />
          </DragHandle>
        ),
      )}
      <DragHandle
        at={end}
        label="Heading of the beam"
        now={round(heading, 1)}
        least={0}
        most={360}
        valueText={`${round(heading, 1)} degrees from true north`}
        cursor="move"
        {...drag}
        onDrag={turnTo}
        onStep={(presses) => onTurn(Math.round(heading) + presses)}
      >
        <path className="yard-arrowhead" d="M0-10L7 6L0 2.5L-7 6Z" transform={`rotate(${heading})`} />
      </DragHandle>
    </svg>
  );
}

function behind(driven: ElementPlan | undefined, element: ElementPlan): number {
  return (driven?.forward_m ?? 0) - element.forward_m;
}

function placeInWords(plan: SavedPlan, driven: ElementPlan | undefined, element: ElementPlan, units: Units): string {
  const back_m = behind(driven, element);
  const length =
    element.left_m === driven?.left_m
      ? spacingText(Math.abs(back_m), plan.frequency_MHz, units)
      : formatQuantity(Math.abs(back_m), "length_m", units);
  return `${length.replace("λ", "wavelengths")} ${back_m < 0 ? "ahead of" : "behind"} the driven element`;
}

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);

const round = (value: number, places: number) => Number(value.toFixed(places));
