import { cpus } from "node:os";
import { type BenchRow, isMet } from "./BenchRow.ts";
import { browserRows } from "./browserRows.ts";
import { browserTrialRows } from "./browserTrialRows.ts";
import { fullWaveRows } from "./fullWaveRows.ts";
import { linalgRows } from "./linalgRows.ts";
import { planRows } from "./planRows.ts";
import { searchRows } from "./searchRows.ts";
import { trialRows } from "./trialRows.ts";

/**
 * `npm run bench` prints what is fast and what is not; nothing here ever fails a build. Ratios hold on any machine,
 * milliseconds on one like the one named. `npm run bench -- solve` runs only the groups whose name holds "solve".
 */
const groups: readonly { name: string; rows(): readonly BenchRow[] | Promise<readonly BenchRow[]> }[] = [
  { name: "equations", rows: linalgRows },
  { name: "preview", rows: planRows },
  { name: "full-wave", rows: fullWaveRows },
  { name: "maps", rows: trialRows },
  { name: "searches", rows: searchRows },
  { name: "browser", rows: browserRows },
  { name: "trials in the browser", rows: browserTrialRows },
];

const format = (value: number, unit: BenchRow["unit"]) => `${value.toPrecision(3)} ${unit}`;

function printRow(row: BenchRow): void {
  const measured = format(row.measured, row.unit).padStart(14);
  const goal = `${row.atLeast ? "≥" : "≤"} ${format(row.goal, row.unit)}`.padStart(16);
  console.log(
    `${row.name.padEnd(64)}${measured}${goal}  ${isMet(row) ? "met" : "NOT MET"}  ${row.remark ?? ""}`.trimEnd(),
  );
}

const asked = process.argv.slice(2);
console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? "unknown processor"}`);
console.log(`${"what".padEnd(64)}${"measured".padStart(14)}${"goal".padStart(16)}`);
for (const group of groups) {
  if (asked.length > 0 && !asked.some((word) => group.name.includes(word))) continue;
  for (const row of await group.rows()) printRow(row);
}
