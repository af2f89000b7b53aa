import { useState } from "react";
import {
  type BenchLead,
  type BenchPoint,
  type BenchReading,
  type ExpectedSheet,
  type ExpectedStep,
  type Problem,
  readTouchstone,
} from "../../../../engine/index.ts";
import { say } from "../../../ui/say.ts";
import { bounds } from "../bounds.ts";
import { freshId } from "../freshId.ts";
import { RefusedFile } from "../RefusedFile.tsx";
import { today } from "../today.ts";
import { useBenchEdit } from "../useBenchEdit.ts";
import { FileTaker } from "./FileTaker.tsx";
import { PointForm } from "./PointForm.tsx";
import { pointsOfFile } from "./pointsOfFile.ts";
import { ReadingCard } from "./ReadingCard.tsx";

interface Props {
  readonly step: ExpectedStep;
  readonly sheet: ExpectedSheet;
  readonly readings: readonly BenchReading[];
  readonly all: readonly BenchReading[];
  readonly lead: BenchLead | undefined;
}

/** The readings of a step: those there are, and a place for another, typed or from a file. */
export function StepReadings({ step, sheet, readings, all, lead }: Props) {
  const edit = useBenchEdit();
  const [isLead, setLead] = useState(false);
  const [refused, setRefused] = useState<{ readonly name: string; readonly problems: readonly Problem[] } | null>(null);
  const add = (points: readonly BenchPoint[], remark?: string) => {
    if (all.length >= bounds.readings) {
      say(`There are ${all.length} readings already; at most ${bounds.readings} are kept. Take one out first.`, {
        isTrouble: true,
      });
      return;
    }
    const reading: BenchReading = {
      id: freshId("reading", all),
      state: step.state!,
      date: today(),
      lengths_m: step.lengths_m,
      at: isLead && lead ? "lead" : "base",
      points,
      ...(remark ? { remark } : {}),
    };
    edit((bench) => ({ readings: [...(bench.readings ?? []), reading] }), "add a reading");
  };
  const change = (reading: BenchReading, label: string, mergeKey?: string) =>
    edit(
      (bench) => ({ readings: (bench.readings ?? []).map((one) => (one.id === reading.id ? reading : one)) }),
      label,
      mergeKey && `${mergeKey} ${reading.id}`,
    );
  const remove = (id: string) =>
    edit((bench) => {
      const left = (bench.readings ?? []).filter((one) => one.id !== id);
      return { readings: left.length > 0 ? left : undefined };
    }, "take a reading out");
  const onText = (text: string, name: string) => {
    const read = readTouchstone(text);
    const points = read.ok ? pointsOfFile(read.value.points, sheet) : read;
    if (!points.ok) return setRefused({ name, problems: points.problems });
    setRefused(null);
    add(points.value, name.slice(0, bounds.text_characters));
    say(`${name} is read: ${points.value.length} frequencies.`);
  };
  return (
    <section className="bn-readings" aria-label="Readings of this step">
      <h4>{readings.length > 0 ? "What you read" : "Your reading"}</h4>
      {readings.map((reading) => (
        <ReadingCard
          key={reading.id}
          reading={reading}
          lead={lead}
          frequency_MHz={sheet.frequency_MHz}
          onChange={change}
          onRemove={() => remove(reading.id)}
        />
      ))}
      {lead && (
        <label className="check">
          <input type="checkbox" checked={isLead} onChange={(event) => setLead(event.currentTarget.checked)} />
          the next reading is taken through the cable
        </label>
      )}
      <PointForm frequency_MHz={sheet.frequency_MHz} word="Keep this reading" onPoint={(point) => add([point])} />
      <FileTaker
        word="Reading from a .s1p file"
        accept=".s1p,.S1P,.txt,text/plain"
        hint="or drop it here: the one-port Touchstone files that analysers write"
        onText={onText}
        onUnreadable={(name) => say(`${name} could not be read from the disk.`, { isTrouble: true })}
      />
      {refused && <RefusedFile {...refused} onDismiss={() => setRefused(null)} />}
    </section>
  );
}
