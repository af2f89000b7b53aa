import { memo } from "react";
import type { PlanReadout } from "../../engine/index.ts";
import { staleWords } from "./ChartFrame.tsx";
import { figure, signedFigure } from "./figure.ts";
import { LadderRung } from "./LadderRung.tsx";
import { ladderRows } from "./ladderRows.ts";
import { ladderScale } from "./ladderScale.ts";
import type { PathBand } from "./PathBand.ts";
import "./Ladder.css";

interface Props {
  /** Null while there is no answer: the rungs stand empty. */
  readonly live: PlanReadout | null;
  readonly baseline: PlanReadout | null;
  /** Null: nothing to compare with, and gains are shown as they are. */
  readonly baselineName: string | null;
  readonly path: PathBand;
  /** Rungs to keep room for while there is no answer. */
  readonly rungs_deg: readonly number[];
  readonly rearSector_deg: number;
  readonly stale: boolean;
}

/** A rung per low angle, high ones on top: what the design gains over the baseline there, and what it leaves behind. */
export const Ladder = memo(function Ladder(p: Props) {
  const rows = p.live ? ladderRows(p.live, p.baseline, p.path) : emptyRows(p.rungs_deg, p.path);
  const scale = ladderScale(rows);
  const hasBaseline = p.baselineName !== null;
  return (
    <div className="ld-holder">
      <table className={p.stale ? "ld ld-stale" : "ld"}>
        <caption>
          {hasBaseline ? `Forward gain against “${p.baselineName}”, by elevation` : "Forward gain in dBi, by elevation"}
        </caption>
        <thead>
          <tr>
            <th scope="col" className="ld-angle">
              angle
            </th>
            <th scope="col" className="ld-track-head">
              <span className="ld-ends">
                <span>{figure(scale.from_dBi, 0)}</span>
                <span className="ld-unit">dBi</span>
                <span>{figure(scale.to_dBi, 0)}</span>
              </span>
            </th>
            <th scope="col" className="ld-gain">
              {hasBaseline ? "gained" : "dBi"}
            </th>
            <th scope="col" className="ld-back">
              <abbr title="front-to-back: ahead against straight behind, dB">F/B</abbr>
            </th>
            <th scope="col" className="ld-back">
              <abbr title={`front-to-rear: ahead against the loudest of the ${p.rearSector_deg}° behind, dB`}>
                worst
              </abbr>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <LadderRung
              key={row.elevation_deg}
              elevation_deg={row.elevation_deg}
              carriesPath={row.carriesPath}
              baselineName={p.baselineName}
              now={figure(row.now_dBi, 1)}
              baseline={figure(row.baseline_dBi, 1)}
              gain={hasBaseline ? signedFigure(row.difference_dB, 1) : figure(row.now_dBi, 1)}
              back={figure(row.frontToBack_dB, 1)}
              rear={figure(row.frontToRear_dB, 1)}
              now_percent={percent(scale.place(row.now_dBi))}
              baseline_percent={percent(scale.place(row.baseline_dBi))}
            />
          ))}
        </tbody>
      </table>
      <p className="ld-said">{p.stale ? staleWords : ""}</p>
    </div>
  );
});

/** To a tenth of one per cent, less than a pixel of the track: a mark that would not be seen to move stays. */
const percent = (place: number) => Math.round(place * 1000) / 10;

function emptyRows(rungs_deg: readonly number[], path: PathBand) {
  const none = Number.NaN;
  return rungs_deg
    .toSorted((a, b) => b - a)
    .map((elevation_deg) => ({
      elevation_deg,
      now_dBi: none,
      baseline_dBi: none,
      difference_dB: none,
      frontToBack_dB: none,
      frontToRear_dB: none,
      carriesPath: elevation_deg >= path.from_deg && elevation_deg <= path.to_deg,
    }));
}
