import type { ExpectedSheet, ExpectedStep, SavedPlan } from "../../../../engine/index.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import type { AnswerModel } from "../../../store/answerModels.ts";
import type { Units } from "../../../store/useSettings.ts";
import { adviceWords } from "../../../text/adviceWords.ts";
import { stepWords } from "../../../text/stepWords.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { elementName } from "../../yard/elementName.ts";
import { basesInWords } from "../measuring/basesInWords.ts";
import { cutWords } from "../measuring/cutWords.ts";
import { type ExpectedRow, expectedRows } from "../measuring/expectedRows.ts";
import { SheetPage } from "./SheetPage.tsx";
import { lineDistance } from "./tallest.ts";

interface Props {
  readonly plan: SavedPlan;
  readonly units: Units;
  readonly sheet: ExpectedSheet;
  readonly model: AnswerModel | null;
}

/** Which figures a step is judged by; on paper the others would only take room. */
const shown: Partial<Record<ExpectedStep["kind"], readonly ExpectedRow["key"][]>> = {
  "ground-loss": [],
  "trim-driven": ["resonance_MHz", "resonanceResistance_ohm", "reactance_ohm"],
  "trim-reflector": ["resonance_MHz", "resistance_ohm", "reactance_ohm"],
  "reflector-joined": ["resistance_ohm", "reactance_ohm", "swr", "leastSwr_MHz"],
  retrim: [],
  reversed: ["resonance_MHz", "resistance_ohm", "reactance_ohm"],
  recheck: ["resonance_MHz", "resonanceResistance_ohm"],
};
/** What is written down where nothing is held against a figure. */
const blanks: Partial<Record<ExpectedStep["kind"], readonly string[]>> = {
  "ground-loss": ["R at X = 0 now", "4 radials more", "8 more", "R less 36 Ω, an estimate"],
  retrim: ["driven is now", "R", "X, 0 is wanted", "SWR"],
  record: ["driven", "reflector", "files"],
};
const usual: readonly ExpectedRow["key"][] = [
  "resonance_MHz",
  "resonanceResistance_ohm",
  "resistance_ohm",
  "reactance_ohm",
  "leastSwr_MHz",
];

/** Steps that read once more what a step before has read. */
const repeats: ReadonlySet<ExpectedStep["kind"]> = new Set(["ground-loss", "recheck"]);
/** Said in the sheet's own first lines. */
const elsewhere: ReadonlySet<string> = new Set(["not-where-swr-is-least", "read-through-lead"]);

/** The procedure with what to expect and blanks for what is read. */
export function MeasuringSheet({ plan, units, sheet, model }: Props) {
  const nameOf = (id: string) => {
    const element = plan.elements.find((one) => one.id === id);
    return element ? elementName(plan, element) : id;
  };
  // What to think of is said once, at the foot, by letter.
  const said: string[] = [];
  const letters = (step: ExpectedStep) =>
    step.advice
      .filter(({ code }) => !elsewhere.has(code))
      .flatMap((rule) => {
        const words = adviceWords(rule);
        if (words === null) return [];
        if (!said.includes(words)) said.push(words);
        return [String.fromCharCode(97 + said.indexOf(words))];
      });
  const rows = sheet.steps.map((step) => ({ step, ifNot: repeats.has(step.kind) ? [] : letters(step) }));
  const length = (m: number) => formatQuantity(m, "length_m", units);
  return (
    <SheetPage
      name="Measuring sheet"
      about={`${model === "preview" ? "Expected values are a quick preview. " : ""}Expected (drier … wetter soil) ± what is near enough; write what you read under it. No thunder, no transmitter. Measure and calibrate at the base, never through a cable. Trim by X, not by SWR.`}
      lineDistance={lineDistance(plan, units)}
    >
      <div className="pg-blanks">
        <span>day</span>
        <span>ground: dry · damp · wet · frozen · snow</span>
        <span>who</span>
        <span>meter</span>
      </div>
      <ol className="pg-steps">
        {rows.map(({ step, ifNot }) => {
          const keys = shown[step.kind] ?? usual;
          const figures = expectedRows(step, sheet.frequency_MHz).filter((row) => keys.includes(row.key));
          return (
            <li key={step.number} className="pg-step">
              <p className="pg-step-head">
                <b>
                  {step.number}. {stepWords[step.kind].title}.
                </b>{" "}
                {step.state && basesInWords(step, nameOf)}{" "}
                {(step.kind === "fit-long" || step.cut) &&
                  `Driven ${length(step.lengths_m.driven_m)}${step.lengths_m.reflector_m === undefined ? "" : `, reflector ${length(step.lengths_m.reflector_m)}`}. `}
                {step.cut && cutWords(step.cut, nameOf(step.cut.elementId), units).join(" ")}{" "}
                {step.mutual_ohm &&
                  `Expected ${impedanceText(step.mutual_ohm.resistance.value, step.mutual_ohm.reactance.value)}; the page works yours out from steps ${measuredSteps(sheet)}.`}{" "}
                {ifNot.length > 0 && <span className="pg-ifnot">If not so: {ifNot.join(", ")}.</span>}
              </p>
              {blanks[step.kind] && (
                <div className="pg-blanks">
                  {blanks[step.kind]!.map((blank) => (
                    <span key={blank}>{blank}</span>
                  ))}
                </div>
              )}
              {figures.length > 0 && (
                <div className="pg-figures">
                  {figures.map((row) => (
                    <div key={row.key} className="pg-figure">
                      <span>
                        {row.short} <b>{row.expected}</b>
                      </span>
                      <span>
                        {row.bareRange && `(${row.bareRange})`} {row.tolerance}
                      </span>
                      <span className="pg-write" />
                    </div>
                  ))}
                </div>
              )}
            </li>
          );
        })}
      </ol>
      <ul className="pg-notes">
        {said.map((words, i) => (
          <li key={words}>
            <b>{String.fromCharCode(97 + i)}</b> {words}
          </li>
        ))}
      </ul>
    </SheetPage>
  );
}

/** The numbers of the readings that mutual impedance is worked out from. */
function measuredSteps({ steps }: ExpectedSheet): string {
  const kinds: readonly ExpectedStep["kind"][] = ["trim-driven", "trim-reflector", "reflector-joined"];
  return steps
    .filter((step) => kinds.includes(step.kind))
    .map((step) => step.number)
    .join(", ");
}
