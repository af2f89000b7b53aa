import { useState } from "react";
import { atBase, type BenchLead, type BenchReading } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { Button } from "../../../ui/Button.tsx";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { bounds } from "../bounds.ts";
import { dayOrWhy } from "../dayOrWhy.ts";
import { WordsField } from "../WordsField.tsx";
import { PointForm } from "./PointForm.tsx";

interface Props {
  readonly reading: BenchReading;
  readonly lead: BenchLead | undefined;
  readonly frequency_MHz: number;
  onChange(reading: BenchReading, label: string, mergeKey?: string): void;
  onRemove(): void;
}

/** So many points are listed one by one; more come from a file and are drawn. */
const listed = 12;

/** One reading: when, at which lengths, where the meter was, and what it showed. */
export function ReadingCard({ reading, lead, frequency_MHz, onChange, onRemove }: Props) {
  const [isOpen, setOpen] = useState(false);
  const units = useSettings((s) => s.units);
  const { points, lengths_m } = reading;
  const sorted = points.toSorted((a, b) => a.frequency_MHz - b.frequency_MHz);
  const carried = reading.at === "lead" && lead ? atBase(lead, points) : null;
  const length = (m: number) => formatQuantity(m, "length_m", units);
  const setLength = (key: "driven_m" | "reflector_m", value: number, stepped: boolean) =>
    onChange(
      { ...reading, lengths_m: { ...lengths_m, [key]: value } },
      "change the length a reading was taken at",
      stepped ? `${key} of reading` : undefined,
    );
  return (
    <section className="bn-reading" aria-label={`Reading of ${reading.date}`}>
      <header className="bn-reading-head">
        <h4>{reading.date}</h4>
        <span>
          driven {length(lengths_m.driven_m)}
          {lengths_m.reflector_m !== undefined && `, reflector ${length(lengths_m.reflector_m)}`}
          {reading.at === "lead" && ", through the cable"}
        </span>
        <Button look="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {isOpen ? "Done" : "Change"}
        </Button>
      </header>
      {points.length > listed ? (
        <p className="fr-small">
          {points.length} frequencies from {megahertz(sorted[0]!.frequency_MHz)} to{" "}
          {megahertz(sorted.at(-1)!.frequency_MHz)} MHz
          {reading.remark && `: ${reading.remark}`}
        </p>
      ) : (
        <ul className="bn-points">
          {sorted.map((point) => (
            <li key={`${point.frequency_MHz} ${point.resistance_ohm} ${point.reactance_ohm}`}>
              {megahertz(point.frequency_MHz)} MHz: R {figure(point.resistance_ohm, 1)} Ω, X{" "}
              {figure(point.reactance_ohm, 1)} Ω
              {isOpen && points.length > 1 && (
                <Button
                  look="quiet"
                  aria-label={`Take ${megahertz(point.frequency_MHz)} MHz out of this reading`}
                  onClick={() =>
                    onChange(
                      { ...reading, points: points.filter((one) => one !== point) },
                      "take a frequency out of a reading",
                    )
                  }
                >
                  Take out
                </Button>
              )}
            </li>
          ))}
        </ul>
      )}
      {reading.at === "lead" && !lead && (
        <p className="fr-problem">
          This was read through a cable, and none is stated above: it is not used until one is.
        </p>
      )}
      {carried && !carried.ok && <p className="fr-problem">{carried.problems[0]!.message}</p>}
      {isOpen && (
        <>
          <div className="fr-fields">
            <WordsField
              label="day of the reading"
              type="date"
              value={reading.date}
              most={10}
              check={dayOrWhy}
              onCommit={(date) => onChange({ ...reading, date }, "change the day of a reading")}
            />
            <QuantityField
              label="driven was"
              kind="length_m"
              value={lengths_m.driven_m}
              {...bounds.length_m}
              onCommit={(value, stepped) => setLength("driven_m", value, stepped)}
            />
            {lengths_m.reflector_m !== undefined && (
              <QuantityField
                label="reflector was"
                kind="length_m"
                value={lengths_m.reflector_m}
                {...bounds.length_m}
                onCommit={(value, stepped) => setLength("reflector_m", value, stepped)}
              />
            )}
            <WordsField
              label="remark on the reading"
              value={reading.remark ?? ""}
              most={bounds.text_characters}
              onCommit={(text) => {
                const { remark: _, ...rest } = reading;
                onChange(text.trim() ? { ...rest, remark: text.trim() } : rest, "change a remark");
              }}
            />
          </div>
          <label className="check">
            <input
              type="checkbox"
              checked={reading.at === "lead"}
              onChange={(event) =>
                onChange(
                  { ...reading, at: event.currentTarget.checked ? "lead" : "base" },
                  "say where a reading was taken",
                )
              }
            />
            read through the cable
          </label>
          <PointForm
            frequency_MHz={frequency_MHz}
            word="Add this frequency"
            onPoint={(point) => onChange({ ...reading, points: [...points, point] }, "add a frequency to a reading")}
          />
          <div className="fr-acts">
            <Button look="quiet" onClick={onRemove}>
              Take this reading out
            </Button>
          </div>
        </>
      )}
    </section>
  );
}
