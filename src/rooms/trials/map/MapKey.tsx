import type { MapMark } from "../../../../engine/index.ts";
import { figure, withUnit } from "../../../charts/figure.ts";
import { markPath } from "../../../charts/markPath.ts";
import type { Lengths } from "../useLengths.ts";
import type { Level } from "./mapLayout.ts";

interface Props {
  readonly levels: readonly Level[];
  readonly about: { readonly unit: string; readonly decimals: number; readonly isLow: boolean };
  readonly best: readonly {
    readonly id: string;
    readonly style: number;
    readonly name: string;
    readonly mark: MapMark;
  }[];
  /** What the cursor stands on. */
  readonly cursor: string | null;
  readonly lengths: Lengths;
  readonly isBounded: boolean;
}

/** The colours with their values, the marks with their names, and what the cursor reads. */
export function MapKey({ levels, about, best, cursor, lengths, isBounded }: Props) {
  const part = (i: number) => (i + 1) / (levels.length + 1);
  const low = levels[0];
  const high = levels.at(-1);
  return (
    <div className="mc-key">
      <p className="mc-read" role="status">
        {cursor ?? "The plan is off this map."}
      </p>
      {low && high && (
        <p className="mc-ramp">
          <span>{withUnit(figure(low.value, about.decimals), about.unit).trim()}</span>
          <span className="mc-ramp-bar" aria-hidden="true">
            {levels.map((level, i) => (
              <span
                key={level.value}
                style={{
                  background: `color-mix(in oklab, var(--pin) ${Math.round(80 * (about.isLow ? 1 - part(i) : part(i)))}%, var(--sheet))`,
                }}
              />
            ))}
          </span>
          <span>{withUnit(figure(high.value, about.decimals), about.unit).trim()}</span>
        </p>
      )}
      <ul className="mc-marks">
        {best.map((one) => (
          <li key={one.id}>
            <svg width="14" height="14" aria-hidden="true">
              <path className="tr-mark tr-mark-pin" d={markPath({ role: "pin", style: one.style }, [7, 7])} />
            </svg>
            <span>
              {`${one.name}: ${lengths.near(one.mark.spacing_m)} apart, reflector ${lengths.near(one.mark.reflectorHeight_m)}${one.mark.isAtEdge ? "; at the map’s edge, beyond it may be better" : ""}`}
            </span>
          </li>
        ))}
        <li>
          <svg width="22" height="14" aria-hidden="true">
            <path className="mc-swr" d="M1,7H21" />
          </svg>
          <span>the highest SWR you take</span>
        </li>
        {isBounded && <li>hatched: beyond the bounds</li>}
      </ul>
    </div>
  );
}
