import { useId } from "react";
import type { Line } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { useSettings } from "../../../store/useSettings.ts";
import type { PairRow } from "./pairState.ts";
import { partWords } from "./partWords.ts";

interface Props {
  readonly rows: readonly PairRow[];
  readonly elevation_deg: number;
  readonly rearSector_deg: number;
  readonly line: Line;
  readonly drawnId: PairRow["id"] | null;
  onDraw(id: PairRow["id"]): void;
}

/** All ways to use the second vertical side by side; a radio button says which harness is drawn below. */
export function PairTable({ rows, elevation_deg, rearSector_deg, line, drawnId, onDraw }: Props) {
  const name = useId();
  const units = useSettings((s) => s.units);
  const single = rows.find((row) => row.id === "single")!;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <section className="fr-scroll" tabIndex={0} aria-label="Ways to use the second vertical">
      <table className="fr-table fr-matches">
        <caption>
          At {figure(elevation_deg, 0)}° elevation; worst behind within ±{figure(rearSector_deg / 2, 0)}°; SWR against{" "}
          {figure(line.impedance_ohm, 0)} Ω; choose which harness is drawn below
        </caption>
        <thead>
          <tr>
            <th scope="col">what, and what it needs</th>
            <th scope="col">gained ahead, dB</th>
            <th scope="col">front-to-back, dB</th>
            <th scope="col">front to worst, dB</th>
            <th scope="col">current, rear over front</th>
            <th scope="col">what the line sees</th>
            <th scope="col">SWR here, worst in band</th>
            <th scope="col">harness loss, dB</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row
              key={row.id}
              row={row}
              gained_dB={row.gain_dBi - single.gain_dBi}
              needs={row.harness?.named.design.ok ? partWords(row.harness.named.design.value.network.parts, units) : []}
              swr={
                row.curve && row.harness
                  ? row.harness.design.swr
                  : row.input_ohm && row.curve
                    ? swrHere(row, rows)
                    : null
              }
              group={name}
              isDrawn={row.id === drawnId}
              onDraw={onDraw}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Where the curve passes the plan's frequency: the point of it nearest to the harnesses' own design point. */
function swrHere(row: PairRow, rows: readonly PairRow[]): number | null {
  const at = rows.find((one) => one.harness)?.harness?.design.frequency_MHz;
  if (!row.curve || at === undefined) return null;
  const { frequency_MHz, swr } = row.curve;
  let nearest = 0;
  for (const [i, f] of frequency_MHz.entries())
    if (Math.abs(f - at) < Math.abs(frequency_MHz[nearest]! - at)) nearest = i;
  return swr[nearest]!;
}

interface RowProps {
  readonly row: PairRow;
  readonly gained_dB: number;
  readonly needs: readonly string[];
  readonly swr: number | null;
  readonly group: string;
  readonly isDrawn: boolean;
  onDraw(id: PairRow["id"]): void;
}

function Row({ row, gained_dB, needs, swr, group, isDrawn, onDraw }: RowProps) {
  const { readout, ratio, input_ohm, harness, curve } = row;
  const what = (
    <span>
      {row.name}
      {needs.length > 0 && <span className="fr-values">{needs.join(", ")}</span>}
      {row.problem && <span className="fr-why">{row.problem.message}</span>}
      {row.readout?.feeds.some((feed) => feed.impedance_ohm.re < 0) && (
        <span className="fr-why">one element gives power back to the harness</span>
      )}
    </span>
  );
  return (
    <tr data-chosen={isDrawn || undefined}>
      <th scope="row">
        {harness ? (
          <label className="fr-choice">
            <input type="radio" name={group} checked={isDrawn} onChange={() => onDraw(row.id)} />
            {what}
          </label>
        ) : (
          what
        )}
      </th>
      <td>{signedFigure(gained_dB, 1)}</td>
      <td>{figure(readout?.path.frontToBack_dB ?? Number.NaN, 1)}</td>
      <td>{figure(readout?.path.frontToRear_dB ?? Number.NaN, 1)}</td>
      <td>{ratio ? ratioText(ratio) : readout ? currentText(row) : "–"}</td>
      <td>{input_ohm ? impedanceText(input_ohm.re, input_ohm.im) : readout ? "two feedpoints" : "–"}</td>
      <td>{swr !== null && curve ? `${swrText(swr)}, ${swrText(curve.worst)}` : "–"}</td>
      <td>{harness ? figure(harness.loss_dB, 2) : "–"}</td>
    </tr>
  );
}

const swrText = (value: number) => (value > 100 ? "over 100" : figure(value, 2));

const ratioText = ({ re, im }: { readonly re: number; readonly im: number }) =>
  `${figure(Math.hypot(re, im), 2)} at ${signedFigure((Math.atan2(im, re) * 180) / Math.PI, 0)}°`;

/** What the unfed element carries by itself. */
function currentText({ id, readout }: PairRow): string {
  const own = readout!.baseCurrents[1];
  return id === "parasitic" && own ? ratioText(own.current) : "–";
}
