import type { LogEntry } from "../../../../engine/index.ts";
import { groundWords, othersWords } from "../../../text/benchWords.ts";
import { Button } from "../../../ui/Button.tsx";
import { BlankableField } from "../BlankableField.tsx";
import { bounds } from "../bounds.ts";
import { ChoiceField } from "../ChoiceField.tsx";
import { dayOrWhy } from "../dayOrWhy.ts";
import { WordsField } from "../WordsField.tsx";

interface Props {
  readonly entry: LogEntry;
  readonly elements: readonly { readonly value: string; readonly label: string }[];
  onChange(entry: LogEntry, label: string, mergeKey?: string): void;
  onRemove(): void;
  onClose(): void;
}

type Figures = "frequency_MHz" | "resistance_ohm" | "reactance_ohm" | "swr" | "resonance_MHz";
type Texts = "time" | "who" | "action" | "remark";

/** One line of the log, open to be written in. A figure that was not taken stays empty. */
export function EntryFields({ entry, elements, onChange, onRemove, onClose }: Props) {
  const set = <K extends Figures | Texts>(key: K, value: LogEntry[K] | undefined, label: string) => {
    const { [key]: _, ...rest } = entry;
    onChange((value === undefined || value === "" ? rest : { ...rest, [key]: value }) as LogEntry, label);
  };
  return (
    <section className="bn-card" aria-label={`Entry of ${entry.date}`}>
      <div className="fr-fields">
        <WordsField
          label="day"
          type="date"
          value={entry.date}
          most={10}
          check={dayOrWhy}
          onCommit={(date) => onChange({ ...entry, date }, "change the day of an entry")}
        />
        <WordsField
          label="time"
          type="time"
          value={entry.time ?? ""}
          most={5}
          onCommit={(time) => set("time", time.slice(0, 5), "change the time of an entry")}
        />
        <ChoiceField
          label="ground"
          value={entry.ground}
          choices={groundWords}
          onChoose={(ground) => onChange({ ...entry, ground }, "change the ground of an entry")}
        />
        <WordsField
          label="who measured"
          value={entry.who ?? ""}
          most={bounds.text_characters}
          onCommit={(who) => set("who", who.trim(), "change who measured")}
        />
        <ChoiceField
          label="element that was fed"
          value={entry.fed}
          choices={
            elements.some((one) => one.value === entry.fed)
              ? elements
              : [...elements, { value: entry.fed, label: entry.fed }]
          }
          onChoose={(fed) => onChange({ ...entry, fed }, "change what was fed")}
        />
        <ChoiceField
          label="base of the other"
          value={entry.others}
          choices={othersWords}
          onChoose={(others) => onChange({ ...entry, others }, "change the other base of an entry")}
        />
        <BlankableField
          label="frequency"
          kind="frequency_MHz"
          value={entry.frequency_MHz}
          {...bounds.frequency_MHz}
          onCommit={(value) => set("frequency_MHz", value, "change the frequency of an entry")}
        />
        <BlankableField
          label="R there"
          kind="resistance_ohm"
          value={entry.resistance_ohm}
          {...bounds.resistance_ohm}
          onCommit={(value) => set("resistance_ohm", value, "change R of an entry")}
        />
        <BlankableField
          label="X there"
          kind="resistance_ohm"
          value={entry.reactance_ohm}
          {...bounds.reactance_ohm}
          hint="Ω; minus where it is capacitive"
          onCommit={(value) => set("reactance_ohm", value, "change X of an entry")}
        />
        <BlankableField
          label="SWR there"
          kind="ratio"
          value={entry.swr}
          {...bounds.swr}
          hint="against 50 Ω"
          onCommit={(value) => set("swr", value, "change the SWR of an entry")}
        />
        <BlankableField
          label="X is 0 at"
          kind="frequency_MHz"
          value={entry.resonance_MHz}
          {...bounds.frequency_MHz}
          onCommit={(value) => set("resonance_MHz", value, "change the resonance of an entry")}
        />
        <WordsField
          label="what was done"
          value={entry.action ?? ""}
          most={bounds.text_characters}
          hint="such as: cut 20 mm off the driven"
          onCommit={(action) => set("action", action.trim(), "change what was done")}
        />
        <WordsField
          label="remark"
          value={entry.remark ?? ""}
          most={bounds.text_characters}
          hint="weather, file names, what looked odd"
          onCommit={(remark) => set("remark", remark.trim(), "change a remark")}
        />
      </div>
      <div className="fr-acts">
        <Button onClick={onClose}>Done</Button>
        <Button look="quiet" onClick={onRemove}>
          Take this entry out
        </Button>
      </div>
    </section>
  );
}
