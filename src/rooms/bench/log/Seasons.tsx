import type { LogEntry } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { groundWords, othersWords, wordFor } from "../../../text/benchWords.ts";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { seasons } from "./seasons.ts";

interface Props {
  readonly log: readonly LogEntry[];
  nameOf(elementId: string): string;
}

/** How resonance and resistance moved with the state of the ground. */
export function Seasons({ log, nameOf }: Props) {
  const groups = seasons(log);
  if (groups.length === 0) return null;
  const span = (
    one: { value: number; least: number; most: number; count: number } | null,
    text: (v: number) => string,
  ) =>
    one === null
      ? "–"
      : one.count === 1
        ? text(one.value)
        : `${text(one.value)} (${text(one.least)} to ${text(one.most)})`;
  return (
    <section className="bn-part" aria-label="Seasons compared">
      <h3>Seasons compared</h3>
      {groups.map((group) => (
        <RoomTable
          key={group.fed + group.others}
          caption={`${nameOf(group.fed)} fed, other base ${wordFor(othersWords, group.others)}: middle values, least to most, and the drift from the first row`}
          heads={["ground", "entries", "X = 0 at, MHz", "drift, kHz", "R, Ω", "drift, Ω"]}
          rows={group.rows.map((row) => [
            wordFor(groundWords, row.ground),
            row.entries,
            span(row.resonance_MHz, megahertz),
            row.shift_kHz === null ? "–" : signedFigure(row.shift_kHz, 0),
            span(row.resistance_ohm, (v) => figure(v, 1)),
            row.shift_ohm === null ? "–" : signedFigure(row.shift_ohm, 1),
          ])}
        />
      ))}
    </section>
  );
}
