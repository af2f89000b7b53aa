import type { BenchLead, BenchReading, ExpectedSheet, ExpectedStep } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { adviceWords } from "../../../text/adviceWords.ts";
import { stepWords } from "../../../text/stepWords.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { basesInWords } from "./basesInWords.ts";
import { cutWords } from "./cutWords.ts";
import { expectedRows } from "./expectedRows.ts";
import { readingAtBase } from "./readingAtBase.ts";
import { readingFacts } from "./readingFacts.ts";

interface Props {
  readonly step: ExpectedStep;
  readonly sheet: ExpectedSheet;
  /** Of this step; the last is held against what is expected. */
  readonly readings: readonly BenchReading[];
  readonly lead: BenchLead | undefined;
  nameOf(elementId: string): string;
}

/** One step: what is connected, what to do, what to expect, and what to think of if it is not so. */
export function StepCard({ step, sheet, readings, lead, nameOf }: Props) {
  const units = useSettings((s) => s.units);
  const words = stepWords[step.kind];
  const { lengths_m } = step;
  const length = (m: number) => formatQuantity(m, "length_m", units);
  const rows = expectedRows(step, sheet.frequency_MHz);
  const last = readings.findLast((one) => readingAtBase(one, lead) !== null);
  const facts = last && readingFacts({ points: readingAtBase(last, lead)! }, sheet.frequency_MHz);
  const advice = step.advice.flatMap((rule) => adviceWords(rule) ?? []);
  return (
    <div className="bn-step">
      <p className="bn-bases">{basesInWords(step, nameOf)}</p>
      <p>
        Lengths: driven <b>{length(lengths_m.driven_m)}</b>
        {lengths_m.reflector_m !== undefined && (
          <>
            , reflector <b>{length(lengths_m.reflector_m)}</b>
          </>
        )}
        .
      </p>
      <ul className="bn-todo">
        {words.todo.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {step.cut && <p className="bn-cut">{cutWords(step.cut, nameOf(step.cut.elementId), units).join(" ")}</p>}
      {rows.length > 0 && (
        <RoomTable
          caption={`What the meter should show at the ${meterPlace(step, nameOf)}${step.kind === "retrim" ? ", before this cut" : ""}`}
          heads={[
            "",
            "expected",
            ...(sheet.soils.length > 1 ? ["drier to wetter soil"] : []),
            "near enough",
            ...(facts ? ["you read"] : []),
          ]}
          rows={rows.map((row) => {
            const value = facts?.[row.key] ?? null;
            const judged = value === null ? null : row.judge(value);
            return [
              row.name,
              <b key="expected">{row.expected}</b>,
              ...(sheet.soils.length > 1 ? [row.range || "–"] : []),
              row.tolerance || "–",
              ...(facts
                ? [
                    judged === null ? (
                      "–"
                    ) : (
                      <span key="read" className={judged.beyond === 0 ? undefined : "bn-off"}>
                        {judged.text}
                        {judged.beyond !== 0 && `, ${judged.beyondText}`}
                        {judged.beyond === 0 && row.tolerance !== "" && " ✓"}
                      </span>
                    ),
                  ]
                : []),
            ];
          })}
        />
      )}
      {step.mutual_ohm && (
        <p>
          Expected between the bases:{" "}
          <b>{impedanceText(step.mutual_ohm.resistance.value, step.mutual_ohm.reactance.value)}</b>
          {step.mutual_ohm.resistance.high > step.mutual_ohm.resistance.low &&
            ` (R ${figure(step.mutual_ohm.resistance.low, 1)} to ${figure(step.mutual_ohm.resistance.high, 1)}, X ${figure(step.mutual_ohm.reactance.low, 1)} to ${figure(step.mutual_ohm.reactance.high, 1)} Ω from drier to wetter soil)`}
          .
        </p>
      )}
      {step.currentRatio && (
        <p className="fr-small">
          The reflector should then carry {figure(step.currentRatio.magnitude, 2)} of the driven’s current, at{" "}
          {signedFigure(step.currentRatio.phase_deg, 0)}°.
        </p>
      )}
      {advice.length > 0 && (
        <div className="bn-ifnot">
          <h4>If it is not so</h4>
          <ul>
            {advice.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
}

const meterPlace = (step: ExpectedStep, nameOf: (id: string) => string) =>
  `${nameOf(step.bases.find((one) => one.base === "meter")?.elementId ?? "")}’s base`;
