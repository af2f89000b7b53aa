import { useState } from "react";
import type { LogEntry, Problem } from "../../../../engine/index.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { fileName } from "../../../text/fileName.ts";
import { Button } from "../../../ui/Button.tsx";
import { download } from "../../../ui/download.ts";
import { Icon } from "../../../ui/Icon.tsx";
import { say } from "../../../ui/say.ts";
import { FileTaker } from "../measuring/FileTaker.tsx";
import { RefusedFile } from "../RefusedFile.tsx";
import { useBenchEdit } from "../useBenchEdit.ts";
import { readLogCsv, writeLogCsv } from "./logCsv.ts";

/** The log as a table file, out and in; what comes in is added to what is there. */
export function LogFile({ log }: { readonly log: readonly LogEntry[] }) {
  const title = usePlan((s) => s.plan.title);
  const edit = useBenchEdit();
  const [refused, setRefused] = useState<{ readonly name: string; readonly problems: readonly Problem[] } | null>(null);
  const save = () => {
    const name = fileName(`${title} log`, ".csv");
    download(name, writeLogCsv(log), "text/csv");
    say(`Saved as ${name}.`);
  };
  const onText = (text: string, name: string) => {
    const read = readLogCsv(text, log);
    if (!read.ok) return setRefused({ name, problems: read.problems });
    setRefused(null);
    edit((bench) => ({ log: [...(bench.log ?? []), ...read.value] }), `add the entries of ${name}`);
    say(`${name}: ${read.value.length === 1 ? "1 entry is" : `${read.value.length} entries are`} added to the log.`);
  };
  return (
    <>
      <div className="fr-acts">
        <Button icon={<Icon name="save" />} disabled={log.length === 0} onClick={save}>
          Save the log as CSV
        </Button>
      </div>
      <FileTaker
        word="Add entries from a CSV file"
        accept=".csv,text/csv"
        hint="or drop it here: comma-separated, with the heads that saving writes"
        onText={onText}
        onUnreadable={(name) => say(`${name} could not be read from the disk.`, { isTrouble: true })}
      />
      {refused && <RefusedFile {...refused} onDismiss={() => setRefused(null)} />}
    </>
  );
}
