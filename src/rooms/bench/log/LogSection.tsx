import { useState } from "react";
import { drivenOf, type LogEntry } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { groundWords, othersWords, wordFor } from "../../../text/benchWords.ts";
import { Button } from "../../../ui/Button.tsx";
import { Icon } from "../../../ui/Icon.tsx";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { elementName } from "../../yard/elementName.ts";
import { freshId } from "../freshId.ts";
import { timeNow, today } from "../today.ts";
import { benchOf, useBenchEdit } from "../useBenchEdit.ts";
import { EntryFields } from "./EntryFields.tsx";
import { LogFile } from "./LogFile.tsx";
import { Seasons } from "./Seasons.tsx";

const none: readonly LogEntry[] = [];

/** What was read and done, day by day; one entry stands open to be written in. */
export function LogSection() {
  const plan = usePlan((s) => s.plan);
  const log = usePlan((s) => benchOf(s.plan).log ?? none);
  const edit = useBenchEdit();
  const [openId, setOpenId] = useState<string | null>(null);
  const open = log.find((one) => one.id === openId);
  const nameOf = (id: string) => {
    const element = plan.elements.find((one) => one.id === id);
    return element ? elementName(plan, element) : id;
  };
  const add = () => {
    const id = freshId("entry", log);
    const before = log.at(-1);
    const entry: LogEntry = {
      id,
      date: today(),
      time: timeNow(),
      ground: before?.ground ?? "moist",
      fed: before?.fed ?? drivenOf(plan)?.id ?? plan.elements[0]!.id,
      others: before?.others ?? (plan.elements.length > 1 ? "joined" : "none"),
      ...(before?.who === undefined ? {} : { who: before.who }),
    };
    edit((bench) => ({ log: [...(bench.log ?? []), entry] }), "add to the log");
    setOpenId(id);
  };
  const change = (entry: LogEntry, label: string, mergeKey?: string) =>
    edit(
      (bench) => ({ log: (bench.log ?? []).map((one) => (one.id === entry.id ? entry : one)) }),
      label,
      mergeKey && `${mergeKey} ${entry.id}`,
    );
  const remove = (id: string) => {
    edit((bench) => {
      const left = (bench.log ?? []).filter((one) => one.id !== id);
      return { log: left.length > 0 ? left : undefined };
    }, "take an entry out of the log");
    setOpenId(null);
  };
  const sorted = log.toSorted((a, b) => `${a.date} ${a.time ?? ""}`.localeCompare(`${b.date} ${b.time ?? ""}`));
  return (
    <div className="bn-part">
      <div className="bn-said">
        <p>
          A dated line for each visit: how the ground was, what was fed, what the meter showed, what you did. Resonance
          and resistance wander with rain and frost, and a year of lines tells that from a fault. It is kept in the
          plan, in its file too.
        </p>
        <div className="fr-acts">
          <Button look={log.length === 0 ? "hot" : "plain"} icon={<Icon name="plus" />} onClick={add}>
            Add an entry
          </Button>
        </div>
        <LogFile log={log} />
      </div>
      {open && (
        <EntryFields
          key={open.id}
          entry={open}
          elements={plan.elements.map((one) => ({ value: one.id, label: elementName(plan, one) }))}
          onChange={change}
          onRemove={() => remove(open.id)}
          onClose={() => setOpenId(null)}
        />
      )}
      {log.length > 0 && (
        <RoomTable
          caption="The log, oldest first"
          heads={[
            "when",
            "ground",
            "fed",
            "others",
            "MHz",
            "R, Ω",
            "X, Ω",
            "SWR",
            "X = 0 at, MHz",
            "what was done",
            "remark",
          ]}
          rows={sorted.map((one) => [
            <Button
              key="open"
              look="quiet"
              aria-label={`Open the entry of ${[one.date, one.time].filter(Boolean).join(" ")}`}
              aria-expanded={one.id === openId}
              onClick={() => setOpenId(one.id === openId ? null : one.id)}
            >
              {[one.date, one.time].filter(Boolean).join(" ")}
            </Button>,
            wordFor(groundWords, one.ground),
            nameOf(one.fed),
            wordFor(othersWords, one.others),
            taken(one.frequency_MHz, megahertz),
            taken(one.resistance_ohm, (v) => figure(v, 1)),
            taken(one.reactance_ohm, (v) => figure(v, 1)),
            taken(one.swr, (v) => figure(v, 2)),
            taken(one.resonance_MHz, megahertz),
            words(one.action),
            words(one.remark),
          ])}
        />
      )}
      <Seasons log={log} nameOf={nameOf} />
    </div>
  );
}

const taken = (value: number | undefined, text: (value: number) => string) => (value === undefined ? "" : text(value));
/** Long remarks are for the entry itself. */
const words = (text: string | undefined) => <span className="bn-words">{text ?? ""}</span>;
