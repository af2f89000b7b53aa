import { type ReactNode, useState } from "react";
import type { BenchAllowance, ExpectedSheet } from "../../../../engine/index.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { Button } from "../../../ui/Button.tsx";
import { Switch } from "../../../ui/Switch.tsx";
import { Progress } from "../../feed/Progress.tsx";
import type { Stages } from "../../feed/useStages.ts";
import { AllowanceFields } from "../measuring/AllowanceFields.tsx";
import { benchOf } from "../useBenchEdit.ts";
import { CautionSheet } from "./CautionSheet.tsx";
import { CutListSheet } from "./CutListSheet.tsx";
import { LogSheet } from "./LogSheet.tsx";
import { MaterialsSheet } from "./MaterialsSheet.tsx";
import { MeasuringSheet } from "./MeasuringSheet.tsx";
import { OnAirSheet } from "./OnAirSheet.tsx";
import { Paper } from "./Paper.tsx";
import { type PaperSize, paperSizes } from "./PaperSize.ts";
import { RadialSheet } from "./RadialSheet.tsx";
import { SiteFields } from "./SiteFields.tsx";
import { StakeOutSheet } from "./StakeOutSheet.tsx";

interface Sheet {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  /** Null while what it says is not known. */
  readonly page: ReactNode | null;
}

interface Props {
  readonly allowance: BenchAllowance;
  readonly expected: Stages<ExpectedSheet>;
}

/** Paper for the garden: each sheet can be looked at, and those that are ticked are printed with one press. */
export function SheetsSection({ allowance, expected }: Props) {
  const plan = usePlan((s) => s.plan);
  const units = useSettings((s) => s.units);
  const [size, setSize] = useState<PaperSize>(units === "imperial" ? "letter" : "a4");
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set(["on-air", "log"]));
  const [shownId, setShownId] = useState("stakes");
  const { result, model } = expected;
  const sheets: readonly Sheet[] = [
    {
      id: "stakes",
      name: "Stake-out",
      what: "sketch to scale, distances, bearings",
      page: <StakeOutSheet plan={plan} units={units} />,
    },
    {
      id: "cuts",
      name: "Cut list",
      what: "what to cut, long first",
      page: <CutListSheet plan={plan} units={units} allowance={allowance} />,
    },
    {
      id: "radials",
      name: "Radials",
      what: "each by bearing and length",
      page: <RadialSheet plan={plan} units={units} />,
    },
    {
      id: "materials",
      name: "Materials",
      what: "what to have at hand",
      page: <MaterialsSheet plan={plan} units={units} allowance={allowance} />,
    },
    {
      id: "measuring",
      name: "Measuring sheet",
      what: "every step, what to expect, blanks",
      page: result && <MeasuringSheet plan={plan} units={units} sheet={result} model={model} />,
    },
    {
      id: "cautions",
      name: "Cautions",
      what: "to read before the first stake",
      page: <CautionSheet plan={plan} units={units} />,
    },
    { id: "on-air", name: "On-air test", what: "thirty pairs to fill", page: <OnAirSheet plan={plan} units={units} /> },
    { id: "log", name: "Log sheet", what: "blank lines", page: <LogSheet plan={plan} units={units} /> },
  ];
  const printed = sheets.filter((one) => one.page !== null && !left.has(one.id));
  const waiting = sheets.filter((one) => one.page === null && !left.has(one.id));
  const shown = sheets.find((one) => one.id === shownId) ?? sheets[0]!;
  const tick = (id: string) => {
    const next = new Set(left);
    if (!next.delete(id)) next.add(id);
    setLeft(next);
  };
  return (
    <div className="bn-part bn-sheets">
      <div className="bn-sheet-list">
        <ul aria-label="Sheets">
          {sheets.map((one) => (
            <li key={one.id} data-shown={one.id === shown.id || undefined}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={!left.has(one.id)}
                  aria-label={`Print: ${one.name}`}
                  onChange={() => tick(one.id)}
                />
              </label>
              <button type="button" aria-pressed={one.id === shown.id} onClick={() => setShownId(one.id)}>
                <b>{one.name}</b>
                <span className="fr-small">{one.what}</span>
              </button>
            </li>
          ))}
        </ul>
        <Switch<PaperSize> label="paper" choices={paperSizes} value={size} onChange={setSize} />
        <div className="fr-acts">
          <Button look="hot" disabled={printed.length === 0 || waiting.length > 0} onClick={() => window.print()}>
            {printed.length === 1 ? "Print 1 sheet" : `Print ${printed.length + waiting.length} sheets`}
          </Button>
        </div>
        {waiting.length > 0 && (
          <p className="fr-small">
            {waiting.map((one) => one.name).join(", ")}: being solved. Untick what should not wait.
          </p>
        )}
        <Progress answers={expected.answers} isShown={result !== null} />
        {expected.problems.map((one) => (
          <p key={`${one.where} ${one.message}`} className="fr-problem">
            {one.message}
          </p>
        ))}
        <p className="fr-small">
          Lengths are in the units of the page (View). Black and white will do; printing from the browser’s own menu
          prints the same sheets while this part is open.
        </p>
      </div>
      <div className="bn-paper-side">
        {shown.id === "stakes" && <SiteFields />}
        {shown.id === "cuts" && (
          <AllowanceFields
            allowance={allowance}
            isStated={benchOf(plan).allowance !== undefined}
            hasReflector={plan.elements.length > 1}
          />
        )}
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard */}
        <section className="bn-preview" tabIndex={0} aria-label={`Sheet as it is printed: ${shown.name}`}>
          {shown.page ?? <p className="fr-waiting">This sheet waits for the engine.</p>}
        </section>
      </div>
      <Paper size={size}>
        {printed.map((one) => (
          <SheetSlot key={one.id}>{one.page}</SheetSlot>
        ))}
      </Paper>
    </div>
  );
}

/** Keeps a key about a page. */
const SheetSlot = ({ children }: { readonly children: ReactNode }) => children;
