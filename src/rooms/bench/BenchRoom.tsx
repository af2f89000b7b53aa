import { useState } from "react";
import { defaultAllowance } from "../../../engine/index.ts";
import { usePlan } from "../../store/usePlan.ts";
import { SideRoom } from "../../ui/SideRoom.tsx";
import type { MakeWorker } from "../../worker/EngineWorker.ts";
import { FilesSection } from "./files/FilesSection.tsx";
import { LogSection } from "./log/LogSection.tsx";
import { MeasuringSection } from "./measuring/MeasuringSection.tsx";
import { useExpected } from "./measuring/useExpected.ts";
import { OnAirSection } from "./onair/OnAirSection.tsx";
import { RefitSection } from "./refit/RefitSection.tsx";
import { SheetsSection } from "./sheets/SheetsSection.tsx";
import { benchOf } from "./useBenchEdit.ts";
import "../feed/FeedRoom.css";
import "./BenchRoom.css";

type Part = "sheets" | "measuring" | "correction" | "log" | "on-air" | "files";

const partNames: readonly { readonly value: Part; readonly label: string }[] = [
  { value: "sheets", label: "Sheets" },
  { value: "measuring", label: "Measuring" },
  { value: "correction", label: "Correction" },
  { value: "log", label: "Log" },
  { value: "on-air", label: "On air" },
  { value: "files", label: "Files" },
];

interface Props {
  readonly makeWorker: MakeWorker;
  onClose(): void;
}

/** What is taken to the garden and what is brought back, in parts of which one stands open. */
export function BenchRoom({ makeWorker, onClose }: Props) {
  const [part, setPart] = useState<Part>("sheets");
  const allowance = usePlan((s) => benchOf(s.plan).allowance ?? defaultAllowance);
  const expected = useExpected(makeWorker, allowance, part === "sheets" || part === "measuring" || part === "files");
  return (
    <SideRoom<Part>
      name="Paper and readings"
      place="bench"
      parts={partNames}
      part={part}
      onPart={setPart}
      onClose={onClose}
    >
      {part === "sheets" && <SheetsSection allowance={allowance} expected={expected} />}
      {part === "measuring" && <MeasuringSection allowance={allowance} expected={expected} />}
      {part === "correction" && <RefitSection makeWorker={makeWorker} />}
      {part === "log" && <LogSection />}
      {part === "on-air" && <OnAirSection />}
      {part === "files" && <FilesSection expected={expected} />}
    </SideRoom>
  );
}
