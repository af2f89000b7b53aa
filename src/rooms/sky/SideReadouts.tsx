import { memo } from "react";
import type { PlanReadout } from "../../../engine/index.ts";
import { staleWords } from "../../charts/ChartFrame.tsx";
import { figure, noFigure, signedFigure, withUnit } from "../../charts/figure.ts";
import { sideFigures } from "../../charts/sideFigures.ts";
import { sideWords } from "../../charts/sideWords.ts";
import "./SideReadouts.css";

interface Props {
  readonly readout: PlanReadout | null;
  /** Elevation of the azimuth cut, which the directions are read from. */
  readonly elevation_deg: number;
  readonly stale: boolean;
  /** What becomes of the beam across the band; null while it is not known. */
  readonly across?: string | null;
  /** Elements whose currents are told: they have their rows before there is an answer. */
  readonly others: readonly { readonly id: string; readonly name: string }[];
}

/** What the plan does off the main direction, and where the power goes. */
export const SideReadouts = memo(function SideReadouts({
  readout,
  elevation_deg,
  stale,
  others,
  across = null,
}: Props) {
  const side = readout ? sideFigures(readout) : null;
  const against = (gain_dBi: number) => (side ? withUnit(signedFigure(gain_dBi - side.ahead_dBi, 1), "dB") : noFigure);
  const width = side?.halfPowerWidth_deg;
  const rows: (readonly [string, string])[] = [
    ["straight behind", side ? against(side.behind_dBi) : noFigure],
    ["abeam", side ? against(side.abeam_dBi) : noFigure],
    ["half-power width", !side ? noFigure : width == null ? "all round" : `${figure(width, 0)}°`],
    ["as sky wave", side ? withUnit(figure(side.efficiency * 100, 0), "%") : noFigure],
    ...others.map(({ id, name }) => {
      const c = side?.currents.find((one) => one.elementId === id);
      const isKnown = c !== undefined && Number.isFinite(c.magnitude);
      return [
        `current, ${name}`,
        isKnown ? `${figure(c.magnitude, 2)} at ${signedFigure(c.phase_deg, 0)}°` : noFigure,
      ] as const;
    }),
  ];
  return (
    <section className={stale ? "sr sr-stale" : "sr"} aria-label={`Beside the beam, at ${elevation_deg}° elevation`}>
      <dl className="sr-list">
        {rows.map(([name, value]) => (
          <SideRow key={name} name={name} value={value} />
        ))}
      </dl>
      <p className="sr-words">
        {side ? sideWords(side, elevation_deg, (id) => others.find((o) => o.id === id)?.name ?? id) : ""}
      </p>
      {across && <p className="sr-words">{across}</p>}
      {stale && <p className="sr-said">{staleWords}</p>}
    </section>
  );
});

const SideRow = memo(function SideRow({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <div className="sr-row">
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
});
