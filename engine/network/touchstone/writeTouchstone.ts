import { failed, ok, type Problem, type Result } from "../../result.ts";
import { cx } from "../cx.ts";
import { fromMHz } from "./megahertz.ts";
import { pairOfImpedance } from "./pairs.ts";
import type { TouchstoneOptions, TouchstonePoint } from "./Touchstone.ts";

export interface TouchstoneFile {
  readonly points: readonly TouchstonePoint[];
  readonly options: TouchstoneOptions;
  /** Absent: "1". */
  readonly version?: "1" | "2.0" | "2.1";
  /** Each becomes one or more lines that start with "!". */
  readonly comments: readonly string[];
}

/**
 * A one-port Touchstone file: comments, option line, one line a frequency; LF line ends, ASCII, numbers to 12 figures
 * with a decimal point.
 *
 * Problems: no points; a frequency that does not rise or is below 0; an impedance that is not finite, or that Y cannot hold
 * (0 ohm); a reference not above 0.
 */
export function writeTouchstone({ points, options, version = "1", comments }: TouchstoneFile): Result<string> {
  const problems: Problem[] = [];
  const complain = (code: string, where: string, message: string) => problems.push({ code, where, message });
  const { reference_ohm, unit, parameter, format } = options;
  if (!(reference_ohm > 0 && Number.isFinite(reference_ohm)))
    complain("out-of-range", "options.reference_ohm", `The reference is ${reference_ohm} ohm; it must be above 0 ohm.`);
  if (points.length === 0) complain("no-data", "points", "There are no points; a file holds at least one.");
  const lines: string[] = [];
  points.forEach(({ frequency_MHz, impedance_ohm }, i) => {
    const where = `points[${i}]`;
    const before = i === 0 ? -1 : points[i - 1]!.frequency_MHz;
    if (!(Number.isFinite(frequency_MHz) && frequency_MHz >= 0 && frequency_MHz > before))
      complain(
        "not-rising",
        where,
        `The frequency is ${frequency_MHz} MHz; it must be finite and above the one before.`,
      );
    const pair = pairOfImpedance(impedance_ohm, options, reference_ohm, version === "1" ? reference_ohm : 1);
    if (!cx.isFinite(impedance_ohm) || !pair.every(Number.isFinite))
      complain(
        "not-finite",
        where,
        `The impedance is ${impedance_ohm.re} + j${impedance_ohm.im} ohm; ${parameter} cannot hold it.`,
      );
    lines.push([fromMHz(frequency_MHz, unit), ...pair].map(figures).join(" "));
  });
  if (problems.length > 0) return failed(...problems);
  const option = `# ${unit} ${parameter} ${format} R ${figures(reference_ohm)}`;
  const said = comments
    .flatMap((comment) => comment.split(/\r\n|\n|\r/))
    .map((line) => `! ${plainAscii(line)}`.trimEnd());
  const head =
    version === "1"
      ? [...said, option]
      : [
          ...said,
          `[Version] ${version}`,
          option,
          "[Number of Ports] 1",
          `[Number of Frequencies] ${points.length}`,
          `[Reference] ${figures(reference_ohm)}`,
          "[Network Data]",
        ];
  return ok(`${[...head, ...lines, ...(version === "1" ? [] : ["[End]"])].join("\n")}\n`);
}

/** Twelve figures, without the noise of rounding behind them. */
const figures = (value: number): string => `${Number(value.toPrecision(12))}`;

function plainAscii(text: string): string {
  return text
    .replaceAll("–", "-")
    .replaceAll("\t", " ")
    .replace(/[^ -~]/g, "?");
}
