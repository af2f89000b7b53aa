import {
  failed,
  type GroundState,
  type LogEntry,
  type OtherBases,
  ok,
  type Problem,
  type Result,
} from "../../../../engine/index.ts";
import { groundWords, othersWords } from "../../../text/benchWords.ts";
import { bounds } from "../bounds.ts";
import { dayOrWhy } from "../dayOrWhy.ts";
import { freshId } from "../freshId.ts";
import { readCsv } from "./readCsv.ts";

type Figures = "frequency_MHz" | "resistance_ohm" | "reactance_ohm" | "swr" | "resonance_MHz";
type Texts = "time" | "who" | "fed" | "action" | "remark";

/** Columns in their order: what each is called in the file, and which part of an entry it is. */
const columns = [
  { head: "date", key: "date" },
  { head: "time", key: "time" },
  { head: "ground", key: "ground" },
  { head: "who", key: "who" },
  { head: "fed", key: "fed" },
  { head: "other bases", key: "others" },
  { head: "frequency [MHz]", key: "frequency_MHz" },
  { head: "R [ohm]", key: "resistance_ohm" },
  { head: "X [ohm]", key: "reactance_ohm" },
  { head: "SWR [to 50 ohm]", key: "swr" },
  { head: "X = 0 at [MHz]", key: "resonance_MHz" },
  { head: "what was done", key: "action" },
  { head: "remark", key: "remark" },
] as const satisfies readonly { readonly head: string; readonly key: keyof LogEntry }[];

const figures: readonly Figures[] = ["frequency_MHz", "resistance_ohm", "reactance_ohm", "swr", "resonance_MHz"];
const limitsOf: Readonly<Record<Figures, { readonly least: number; readonly most: number }>> = {
  frequency_MHz: bounds.frequency_MHz,
  resistance_ohm: bounds.resistance_ohm,
  reactance_ohm: bounds.reactance_ohm,
  swr: bounds.swr,
  resonance_MHz: bounds.frequency_MHz,
};
/** So many problems are named one by one. */
const named = 50;

/** The log as comma-separated values (RFC 4180, decimal points), one line an entry under one line of heads. */
export function writeLogCsv(log: readonly LogEntry[]): string {
  const lines = [
    columns.map(({ head }) => quoted(head)),
    ...log.map((entry) => columns.map(({ key }) => quoted(entry[key] === undefined ? "" : String(entry[key])))),
  ];
  return `${lines.map((cells) => cells.join(",")).join("\r\n")}\r\n`;
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Reads what `writeLogCsv` writes; columns may stand in any order, and those it does not know are passed over. Entries
 * get ids that `taken` does not have. All or nothing.
 * Problems, by line: no heads, a column missing or twice, a row with another count of fields, a day the calendar does not
 * have, a word that is none of the list, a figure that is none or beyond its limits, a text too long.
 */
export function readLogCsv(text: string, taken: readonly LogEntry[]): Result<readonly LogEntry[]> {
  const read = readCsv(text);
  if (!read.ok) return read;
  const [heads, ...rows] = read.value;
  const problems: Problem[] = [];
  const complain = (line: number, code: string, message: string) =>
    problems.push({ code, where: `line ${line}`, message: `Line ${line}: ${message}.` });
  if (!heads) return failed({ code: "no-data", where: "line 1", message: "Line 1: the file is empty." });

  const places = new Map<string, number>();
  heads.cells.forEach((cell, i) => {
    const head = cell.trim();
    if (places.has(head) && columns.some((one) => one.head === head))
      complain(heads.line, "twice", `the column "${head}" stands there twice`);
    places.set(head, i);
  });
  for (const head of ["date", "ground", "fed", "other bases"])
    if (!places.has(head)) complain(heads.line, "missing", `there is no column "${head}"`);
  if (problems.length > 0) return failed(...problems);
  if (taken.length + rows.length > bounds.logEntries)
    return failed({
      code: "too-many",
      where: "",
      message: `The file has ${rows.length} entries and the log ${taken.length}; at most ${bounds.logEntries} are kept.`,
    });

  const entries: LogEntry[] = [];
  for (const { line, cells } of rows) {
    if (cells.length !== heads.cells.length) {
      complain(line, "wrong-count", `${cells.length} fields stand here under ${heads.cells.length} heads`);
      continue;
    }
    const cell = (head: string) => cells[places.get(head) ?? -1]?.trim() ?? "";
    const why = dayOrWhy(cell("date"));
    if (why) complain(line, "no-day", `${JSON.stringify(cell("date"))} is no day. ${why.replace(/\.$/, "")}`);
    const one = <T extends string>(head: string, words: readonly { readonly value: T }[]): T => {
      const found = words.find(({ value }) => value === cell(head));
      if (!found)
        complain(
          line,
          "unknown-choice",
          `${head} is ${JSON.stringify(cell(head))}; it must be one of ${words.map(({ value }) => value).join(", ")}`,
        );
      return found?.value ?? words[0]!.value;
    };
    const ground: GroundState = one("ground", groundWords);
    const others: OtherBases = one("other bases", othersWords);
    const rest: { [K in Figures]?: number } & { [K in Texts]?: string } = {};
    for (const { head, key } of columns) {
      const written = cell(head);
      if (written === "" || key === "date" || key === "ground" || key === "others") continue;
      if (isFigure(key)) {
        const { least, most } = limitsOf[key];
        const value = /^[+\u2212-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(written)
          ? Number(written.replace("\u2212", "-"))
          : Number.NaN;
        if (!(value >= least && value <= most))
          complain(
            line,
            "not-a-figure",
            `${head} is ${JSON.stringify(written)}; it must be a number from ${least} to ${most} with a decimal point`,
          );
        rest[key] = value;
      } else if (written.length > bounds.text_characters)
        complain(
          line,
          "too-long",
          `${head} has ${written.length} characters; at most ${bounds.text_characters} are kept`,
        );
      else rest[key] = written;
    }
    if (rest.fed === undefined) complain(line, "missing", "it does not say which element was fed");
    entries.push({
      id: freshId("entry", [...taken, ...entries]),
      date: cell("date"),
      ground,
      others,
      ...rest,
      fed: rest.fed ?? "",
    });
  }
  if (problems.length === 0) return ok(entries);
  const more = problems.length - named;
  return failed(
    ...problems.slice(0, named),
    ...(more > 0 ? [{ code: "more", where: "", message: `And ${more} more.` }] : []),
  );
}

const isFigure = (key: string): key is Figures => (figures as readonly string[]).includes(key);
