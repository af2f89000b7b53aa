import type { Note } from "../../result.ts";
import { numberOf } from "./numberOf.ts";
import { short } from "./readOptionLine.ts";

/** What the keywords of a version 2 file have said so far. */
export interface V2State {
  version?: "2.0" | "2.1";
  ports?: number;
  frequencies?: number;
  reference_ohm?: number;
  /** [Reference] stood alone: its number is on the next line. */
  awaitsReference?: boolean;
  inData?: boolean;
  /** Within a section that is passed over, to its end. */
  skipping?: "information" | "noise";
  ended: boolean;
}

interface Around {
  readonly say: (code: string, message: string) => void;
  readonly hasData: boolean;
  readonly hasOptions: boolean;
  readonly notes: Note[];
  readonly line: number;
}

/**
 * Takes one line in brackets, "[Number of Ports] 1", or a line within a section that is passed over. `state` is changed;
 * what does not belong in a one-port file is complained about.
 */
export function readKeyword(body: string, state: V2State, { say, hasData, notes, line }: Around): void {
  const found = /^\[([^\]]*)\]\s*(.*)$/.exec(body);
  if (!found) {
    if (!state.skipping) say("bad-keyword", `${JSON.stringify(short(body))} is not a keyword in brackets`);
    return;
  }
  const name = found[1]!.trim().toLowerCase().replace(/\s+/g, " ");
  const rest = found[2]!.trim();
  if (state.skipping === "information") {
    if (name === "end information") delete state.skipping;
    return;
  }
  if (state.skipping === "noise" && name !== "end") return;
  const whole = () => {
    const value = numberOf(rest);
    return value !== undefined && Number.isInteger(value) && value > 0 ? value : undefined;
  };
  if (name !== "version" && !state.version) {
    say("keyword-without-version", `[${short(found[1]!)}] belongs to version 2, but no [Version] stands before it`);
    return;
  }
  switch (name) {
    case "version":
      if (state.version || hasData) say("version-late", "[Version] must stand first, and once");
      else if (rest === "2.0" || rest === "2.1") state.version = rest;
      else say("unknown-version", `version ${JSON.stringify(short(rest))}; 2.0 and 2.1 are known`);
      return;
    case "number of ports":
      state.ports = whole() ?? 0;
      if (state.ports !== 1) say("not-one-port", `the file has ${short(rest)} ports; only one-port files are read`);
      state.ports ||= 1;
      return;
    case "number of frequencies": {
      const count = whole();
      if (count === undefined)
        say(
          "bad-count",
          `[Number of Frequencies] is ${JSON.stringify(short(rest))}; it must be a whole number above 0`,
        );
      else state.frequencies = count;
      return;
    }
    case "reference": {
      if (rest === "") {
        state.awaitsReference = true;
        return;
      }
      const value = numberOf(rest);
      if (value !== undefined && value > 0) state.reference_ohm = value;
      else say("bad-reference", `[Reference] is ${JSON.stringify(short(rest))}; it must be one number above 0 ohm`);
      return;
    }
    case "matrix format":
      if (!["full", "lower", "upper"].includes(rest.toLowerCase()))
        say("bad-keyword", `[Matrix Format] is ${JSON.stringify(short(rest))}; it must be Full, Lower or Upper`);
      return;
    case "network data":
      state.inData = true;
      return;
    case "begin information":
      state.skipping = "information";
      notes.push({
        code: "section-passed-over",
        message: `Line ${line}: the information section was passed over.`,
        measured: line,
      });
      return;
    case "noise data":
      state.skipping = "noise";
      notes.push({
        code: "section-passed-over",
        message: `Line ${line}: the noise data were passed over.`,
        measured: line,
      });
      return;
    case "number of noise frequencies":
      return;
    case "end":
      delete state.skipping;
      state.ended = true;
      return;
    default:
      say("unknown-keyword", `[${short(found[1]!)}] is not a keyword of a one-port file`);
  }
}
