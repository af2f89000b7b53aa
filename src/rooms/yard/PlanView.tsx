import { useId } from "react";
import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";
import { drivenOf, limits, reflectorOf, withReflector } from "../../../engine/index.ts";
import type { Units } from "../../store/useSettings.ts";
import { formatQuantity } from "../../ui/quantity/formatQuantity.ts";
import type { RadialCurrents } from "./currentLines.ts";
import { DragHandle } from "./DragHandle.tsx";
import { ElementMark } from "./ElementMark.tsx";
import { elementName } from "./elementName.ts";
import { firstThat } from "./firstThat.ts";
import { overlapOfFields } from "./geometryWarnings.ts";
import { headingOf } from "./heading.ts";
import { LabelText } from "./LabelText.tsx";
import type { Box_px } from "./placeLabels.ts";
import { boxAround, isCrowded, placeLabels } from "./placeLabels.ts";
import type { PlanFrame, Point_px } from "./planFrame.ts";
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

const letters = [
  ["N", 0],
  ["E", 90],
  ["S", 180],
  ["W", 270],
] as const;

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
  const clip = useId();

  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  const ghost = reflector ? undefined : reflectorOf(withReflector(plan));
  const height_px = sheetHeight_px(size, 0.86, 0.32, 240);
  const frame = fitPlanFrame(ghost ? withReflector(fitTo) : fitTo, size.width_px, height_px);
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
  const shownLetters = letters.filter(([, bearing]) => bearing === 0 || turnBetween(heading, bearing) > 9);
  const fixed: Box_px[] = [
    { x: barAt.x, y: barAt.y - 22, width: bar.length_px + 4, height: 26 },
    ...shownLetters.map(([, bearing]) => boxAround(onRing(frame, bearing, 20), 9)),
  ];
  const sheet = { width: frame.width_px, height: height_px };
  const write = (short: boolean) => {
    const { wishes, obstacles } = planLabels(frame, plan, units, fixed, short, ghost);
    return { wishes, obstacles, labels: placeLabels(wishes, obstacles, sheet, size.font_px) };
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
      <circle className="yard-compass" cx={frame.centre.x} cy={frame.centre.y} r={frame.ring_px} />
      <path className="yard-ticks" d={compassTicks(frame)} />
      {shownLetters.map(([letter, bearing]) => {
        const at = onRing(frame, bearing, 20);
        return (
          <text key={letter} className="yard-letter" x={at.x} y={at.y + 5} textAnchor="middle">
            {letter}
          </text>
        );
      })}
      <path className="yard-north" d={northArrow(frame)} />

      {plan.elements.map((element) => (
        <circle
          key={element.id}
          className="yard-field"
          cx={place(element).x}
          cy={place(element).y}
          r={reach_px(frame, element)}
        />
      ))}
      {overlaps(plan.elements).map(([one, other], i) => (
        <g key={`${one.id} ${other.id}`}>
          <clipPath id={`${clip}${i}`}>
            <circle cx={place(one).x} cy={place(one).y} r={reach_px(frame, one)} />
          </clipPath>
          <circle
            className="yard-overlap"
            cx={place(other).x}
            cy={place(other).y}
            r={reach_px(frame, other)}
            clipPath={`url(#${clip}${i})`}
          />
        </g>
      ))}

      <RadialsFromAbove frame={frame} heading_deg={heading} plan={plan} currents={currents} />

      {driven && reflector && <Dimension frame={frame} heading={heading} driven={driven} reflector={reflector} />}
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

      {ghost && driven && (
        // biome-ignore lint/a11y/useSemanticElements: a button cannot live inside a drawing
        <g
          className="yard-ghost"
          // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- as above
          role="button"
          tabIndex={0}
          aria-label="Add a reflector here"
          transform={`translate(${place(ghost).x} ${place(ghost).y})`}
          onClick={onAddReflector}
          onKeyDown={(event) => {
            if (event.key !== "Enter" && event.key !== " ") return;
            event.preventDefault();
            onAddReflector();
          }}
        >
          <circle className="yard-handle-touch" r={22} />
          <circle className="yard-ghost-ring" r={7} />
          <path className="yard-ghost-plus" d="M-3.5 0h7M0-3.5v7" />
        </g>
      )}

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

interface DimensionProps {
  readonly frame: PlanFrame;
  readonly heading: number;
  readonly driven: ElementPlan;
  readonly reflector: ElementPlan;
}

function Dimension({ frame, heading, driven, reflector }: DimensionProps) {
  const { from, to, feet } = dimensionLine(frame, heading, driven, reflector);
  return (
    <g className="yard-dimension">
      <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      <line className="yard-dimension-foot" x1={feet[0].x} y1={feet[0].y} x2={from.x} y2={from.y} />
      <line className="yard-dimension-foot" x1={feet[1].x} y1={feet[1].y} x2={to.x} y2={to.y} />
      <circle cx={from.x} cy={from.y} r={2.5} />
      <circle cx={to.x} cy={to.y} r={2.5} />
    </g>
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

function overlaps(elements: readonly ElementPlan[]): (readonly [ElementPlan, ElementPlan])[] {
  return elements.flatMap((one, i) =>
    elements.slice(i + 1).flatMap((other) => (overlapOfFields(one, other) > 0 ? [[one, other] as const] : [])),
  );
}

function reach_px(frame: PlanFrame, element: ElementPlan): number {
  return element.radials.count > 0 ? element.radials.length_m * frame.pxPerM : 0;
}

/** A tick every ten degrees, longer every thirty. */
function compassTicks(frame: PlanFrame): string {
  return Array.from({ length: 36 }, (_, i) => {
    const inner = onRing(frame, i * 10);
    const outer = onRing(frame, i * 10, i % 3 === 0 ? 7 : 4);
    return `M${inner.x.toFixed(1)} ${inner.y.toFixed(1)}L${outer.x.toFixed(1)} ${outer.y.toFixed(1)}`;
  }).join("");
}

function northArrow(frame: PlanFrame): string {
  const { x, y } = onRing(frame, 0);
  return `M${x} ${y - 11}L${x + 5} ${y + 2}H${x - 5}Z`;
}

/** The smaller angle between two bearings. */
function turnBetween(a: number, b: number): number {
  const turn = Math.abs(a - b) % 360;
  return Math.min(turn, 360 - turn);
}

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);

const round = (value: number, places: number) => Number(value.toFixed(places));
