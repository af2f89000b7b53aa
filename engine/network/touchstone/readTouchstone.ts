import { failed, type Note, ok, type Problem, type Result } from "../../result.ts";
import { cx } from "../cx.ts";
import { toMHz } from "./megahertz.ts";
import { numberOf } from "./numberOf.ts";
import { impedanceOfPair } from "./pairs.ts";
import { readKeyword, type V2State } from "./readKeyword.ts";
import { readOptionLine, short } from "./readOptionLine.ts";
import { defaultOptions, type Touchstone, type TouchstoneOptions, type TouchstonePoint } from "./Touchstone.ts";

/** So many problems are named one by one; the rest are counted. */
const NAMED = 50;
const MOST_CHARACTERS = 10_000_000;
const MOST_POINTS = 100_001;

/**
 * Reads a one-port Touchstone file, version 1 or 2, as analysers write them: any unit, S, Z or Y, pairs in any format, any
 * real reference, comments, any line ends, tabs, either case.
 *
 * Version 1 takes Z and Y as normalised to the reference, version 2 in ohm and siemens. A second option line and, in
 * version 2, information and noise sections are passed over with a note.
 * Source: Touchstone File Format Specification (IBIS Open Forum), 1.1 and 2.0; which of it was read and which is from
 * memory stands beside the checks.
 *
 * Problems: `where` is "line 12"; at most 50 are named and one more counts the rest. All or nothing. Never throws.
 */
export function readTouchstone(text: string): Result<Touchstone> {
  const problems: Problem[] = [];
  let more = 0;
  const complain = (line: number, code: string, message: string) => {
    if (problems.length < NAMED) problems.push({ code, where: `line ${line}`, message: `Line ${line}: ${message}.` });
    else more++;
  };
  if (text.length > MOST_CHARACTERS) {
    complain(1, "too-large", `the file is ${text.length} characters long; at most ${MOST_CHARACTERS} are read`);
    return failed(...problems);
  }

  const notes: Note[] = [];
  const comments: string[] = [];
  const points: TouchstonePoint[] = [];
  let options: TouchstoneOptions | undefined;
  const v2: V2State = { ended: false };
  const rows: { readonly line: number; readonly pair: readonly [number, number]; readonly at: number }[] = [];
  const lines = (text.startsWith("\uFEFF") ? text.slice(1) : text).split(/\r\n|\n|\r/);
  let last = -1;
  let saidBare = false;
  for (const [i, raw] of lines.entries()) {
    const line = i + 1;
    const mark = raw.indexOf("!");
    if (mark >= 0) comments.push(raw.slice(mark + 1).trim());
    const body = (mark >= 0 ? raw.slice(0, mark) : raw).trim();
    if (body === "" || v2.ended) continue;
    const say = (code: string, message: string) => complain(line, code, message);
    if (body.startsWith("[") || v2.skipping) {
      readKeyword(body, v2, { say, hasData: rows.length > 0, hasOptions: options !== undefined, notes, line });
      continue;
    }
    if (body.startsWith("#")) {
      if (options)
        notes.push({
          code: "second-option-line",
          message: `Line ${line}: a second option line was passed over.`,
          measured: line,
        });
      else options = readOptionLine(body, say);
      continue;
    }
    const words = body.split(/\s+/);
    if (v2.awaitsReference) {
      const [word] = words;
      const value = numberOf(word!);
      if (words.length === 1 && value !== undefined && value > 0) v2.reference_ohm = value;
      else say("bad-reference", `[Reference] is ${JSON.stringify(short(body))}; it must be one number above 0 ohm`);
      v2.awaitsReference = false;
      continue;
    }
    if (!options && !saidBare) {
      saidBare = true;
      say("no-option-line", "numbers stand before any option line (#)");
    }
    if (v2.version && !v2.inData && !saidBare) {
      saidBare = true;
      say("no-network-data", "numbers stand before [Network Data]");
    }
    if (words.length !== 3) {
      say(
        "wrong-count",
        words.length > 3
          ? `${words.length} numbers; a one-port file has three a line (frequency and one pair)`
          : `${words.length === 1 ? "one number" : "two numbers"}; a line has a frequency and one pair`,
      );
      continue;
    }
    const numbers = words.map(numberOf);
    const bad = numbers.indexOf(undefined);
    if (bad >= 0) {
      say("not-a-number", `${JSON.stringify(short(words[bad]!))} is not a number`);
      continue;
    }
    const [frequency, first, second] = numbers as [number, number, number];
    if (frequency < 0) say("below-zero", `the frequency is ${frequency}; it must not be below 0`);
    else if (frequency <= last)
      say("not-rising", `the frequency is ${frequency}, after ${last}; frequencies must rise`);
    last = Math.max(last, frequency);
    if (rows.length < MOST_POINTS) rows.push({ line, at: frequency, pair: [first, second] });
    else if (rows.length === MOST_POINTS) {
      say("too-many", `more than ${MOST_POINTS} frequencies`);
      v2.ended = true;
    }
  }

  const end = lines.length;
  if (!options) {
    if (rows.length === 0 && !saidBare) complain(1, "no-option-line", "there is no option line (#) in the file");
  } else if (rows.length === 0 && problems.length === 0) complain(end, "no-data", "the file ends without a frequency");
  if (v2.version) {
    if (!v2.ports) complain(end, "no-ports", "the file ends without [Number of Ports]");
    if (v2.awaitsReference) complain(end, "bad-reference", "the file ends without the number of [Reference]");
    if (!v2.ended) complain(end, "no-end", "the file ends without [End]; it may be cut off");
    if (v2.frequencies === undefined) complain(end, "no-frequencies", "the file ends without [Number of Frequencies]");
    else if (v2.frequencies !== rows.length)
      complain(
        end,
        "wrong-frequencies",
        `${rows.length} frequencies were found; [Number of Frequencies] says ${v2.frequencies}`,
      );
  }
  const said = options ?? defaultOptions;
  const reference_ohm = v2.reference_ohm ?? said.reference_ohm;
  for (const { line, at, pair } of rows) {
    const impedance_ohm = impedanceOfPair(pair, said, reference_ohm, v2.version ? 1 : said.reference_ohm);
    if (cx.isFinite(impedance_ohm)) points.push({ frequency_MHz: toMHz(at, said.unit), impedance_ohm });
    else complain(line, "no-impedance", "an open end has no finite impedance");
  }
  if (more > 0)
    problems.push({
      code: "more",
      where: problems.at(-1)!.where,
      message: `… and ${more} more lines or parts that cannot be read.`,
    });
  if (problems.length > 0) return failed(...problems);
  return ok({ version: v2.version ?? "1", options: { ...said, reference_ohm }, points, comments, notes });
}
