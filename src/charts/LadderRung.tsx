import { memo } from "react";
import { LadderTrack } from "./LadderTrack.tsx";

interface Props {
  readonly elevation_deg: number;
  readonly carriesPath: boolean;
  /** Null: nothing to compare with. */
  readonly baselineName: string | null;
  /** Figures as they are printed, so that a rung is drawn anew only when one of them is another. */
  readonly now: string;
  readonly baseline: string;
  readonly gain: string;
  readonly back: string;
  readonly rear: string;
  /** Along the track; NaN: nowhere. */
  readonly now_percent: number;
  readonly baseline_percent: number;
}

/** One row of the ladder. */
export const LadderRung = memo(function LadderRung(p: Props) {
  return (
    <tr className={p.carriesPath ? "ld-row ld-row-path" : "ld-row"}>
      <th scope="row" className="ld-angle">
        {p.elevation_deg}°{p.carriesPath && <span className="ld-carries">path</span>}
      </th>
      <td>
        <LadderTrack
          label={`${p.baselineName === null ? "" : `${p.baselineName} ${p.baseline} dBi, `}now ${p.now} dBi`}
          now={p.now}
          now_percent={p.now_percent}
          baseline={p.baseline}
          baseline_percent={p.baseline_percent}
        />
      </td>
      <td className="ld-gain">{p.gain}</td>
      <td className="ld-back">{p.back}</td>
      <td className="ld-back">{p.rear}</td>
    </tr>
  );
});
