import { failed, ok, type Problem, type Result } from "../../../../engine/index.ts";

export interface CsvRow {
  /** Of the file, counted from 1; the first where a row runs over several. */
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * Rows of comma-separated values by RFC 4180: fields in double quotes may hold commas, line ends and doubled quotes; LF,
 * CRLF and a byte-order mark are all taken; empty lines are passed over.
 * Problems: a quote that is never closed, or one in the midst of a field, by its line.
 */
export function readCsv(text: string): Result<readonly CsvRow[]> {
  const problems: Problem[] = [];
  const rows: CsvRow[] = [];
  const complain = (at: number, code: string, message: string) =>
    problems.push({ code, where: `line ${at}`, message: `Line ${at}: ${message}.` });
  let line = 1;
  let began = 1;
  let cells: string[] = [];
  let cell = "";
  let isQuoted = false;
  let wasQuoted = false;
  const endCell = () => {
    cells.push(cell);
    cell = "";
    wasQuoted = false;
  };
  const endRow = () => {
    const isBlank = cells.length === 0 && cell === "" && !wasQuoted;
    endCell();
    if (!isBlank) rows.push({ line: began, cells });
    cells = [];
  };
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  for (let i = 0; i < body.length; i++) {
    const c = body[i]!;
    if (c === "\n") line++;
    if (isQuoted) {
      if (c !== '"') cell += c;
      else if (body[i + 1] === '"') {
        cell += '"';
        i++;
      } else isQuoted = false;
    } else if (c === '"' && cell === "" && !wasQuoted) {
      isQuoted = true;
      wasQuoted = true;
    } else if (c === '"') complain(line, "stray-quote", "a quotation mark stands in the midst of a field");
    else if (c === ",") endCell();
    else if (c === "\n" || (c === "\r" && body[i + 1] === "\n")) {
      if (c === "\r") {
        i++;
        line++;
      }
      endRow();
      began = line;
    } else cell += c;
  }
  if (isQuoted) complain(began, "open-quote", "a quotation mark is opened here and never closed");
  else if (cells.length > 0 || cell !== "" || wasQuoted) endRow();
  return problems.length > 0 ? failed(...problems) : ok(rows);
}
