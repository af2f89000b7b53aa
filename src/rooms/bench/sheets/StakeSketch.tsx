import type { SavedPlan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";
import { headingOf } from "../../yard/heading.ts";
import { onRing } from "../../yard/planFrame.ts";
import { scaleBar } from "../../yard/scaleBar.ts";
import { stakeDrawing } from "./stakeDrawing.ts";

export interface SketchStake {
  /** The letter it has in the table. */
  readonly letter: string;
  readonly forward_m: number;
  readonly left_m: number;
}

interface Props {
  readonly plan: SavedPlan;
  readonly units: Units;
  readonly stakes: readonly SketchStake[];
  readonly declination_deg: number | undefined;
}

const width = 680;
const height = 480;

/** The plot to scale, true north up: bases, radials, circles that masts could fall into, stakes by letter. */
export function StakeSketch({ plan, units, stakes, declination_deg }: Props) {
  const drawing = stakeDrawing(plan, width, height);
  const { frame, bases, beam } = drawing;
  const bar = scaleBar(frame.pxPerM, units, 120);
  const heading = headingOf(plan);
  const north = { x: width - 46, y: 70 };
  const needle = (bearing: number, length: number) => {
    const a = (bearing * Math.PI) / 180;
    return { x: north.x + length * Math.sin(a), y: north.y - length * Math.cos(a) };
  };
  const trueEnd = needle(0, 46);
  const magneticEnd = needle(declination_deg ?? 0, 46);
  const beamEnd = onRing(frame, heading, 8);
  return (
    <svg
      className="pg-sketch"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`The plot from above, true north up, with ${stakes.length} stakes; distances and bearings stand in the table.`}
    >
      {bases.map((one) => (
        <circle key={one.elementId} className="pg-fall" cx={one.at.x} cy={one.at.y} r={one.fall_px} />
      ))}
      <path className="pg-radials" d={drawing.radials} />
      <path className="pg-beam" d={`M${beam.from.x} ${beam.from.y}L${beam.to.x} ${beam.to.y}`} />
      <text className="pg-mark" x={beamEnd.x} y={beamEnd.y} textAnchor="middle">
        beam
      </text>
      {bases.map((one) => (
        <circle
          key={one.elementId}
          className={one.isFed ? "pg-base pg-base--fed" : "pg-base"}
          cx={one.at.x}
          cy={one.at.y}
          r={5}
        />
      ))}
      {stakes.map((one) => {
        const at = drawing.place(one.forward_m, one.left_m);
        return (
          <g key={one.letter}>
            <path className="pg-stake" d={`M${at.x - 4} ${at.y}h8M${at.x} ${at.y - 4}v8`} />
            <text className="pg-mark" x={at.x + 7} y={at.y + 16}>
              {one.letter}
            </text>
          </g>
        );
      })}
      <path className="pg-needle" d={`M${north.x} ${north.y}V${trueEnd.y}m-5 9l5-9l5 9`} />
      <text className="pg-mark" x={trueEnd.x} y={trueEnd.y - 5} textAnchor="middle">
        true N
      </text>
      {declination_deg !== undefined && (
        <>
          <path
            className="pg-needle pg-needle--magnetic"
            d={`M${north.x} ${north.y}L${magneticEnd.x} ${magneticEnd.y}`}
          />
          <text className="pg-mark" x={width - 4} y={north.y + 18} textAnchor="end">
            dashed: compass
          </text>
        </>
      )}
      <path className="pg-bar" d={`M14 ${height - 16}v6h${bar.length_px.toFixed(1)}v-6`} />
      <text className="pg-mark" x={20} y={height - 20}>
        {bar.label}
      </text>
      <path className="pg-fall" d={`M${width - 240} ${height - 12}h40`} />
      <text className="pg-mark" x={width - 194} y={height - 8}>
        a mast could fall to here
      </text>
    </svg>
  );
}
