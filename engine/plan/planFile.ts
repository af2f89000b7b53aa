import { failed, type Result } from "../result.ts";
import { checkSavedPlan } from "./checkSavedPlan.ts";
import { isFields } from "./Findings.ts";
import { limits } from "./limits.ts";
import { orderedKeys } from "./orderedKeys.ts";
import { parseJsonText } from "./parseJsonText.ts";
import type { PlainData } from "./plainCopy.ts";
import type { SavedPlan } from "./SavedPlan.ts";

/**
 * The plan as the text of a file: JSON, two spaces deep, a newline at the end. The same plan gives the same text,
 * however its objects were made, so files compare well line by line.
 */
export function writePlanFile(plan: SavedPlan): string {
  const inOrder = (_: string, value: PlainData): PlainData =>
    isFields(value) ? Object.fromEntries(orderedKeys(value).map((key) => [key, value[key]!])) : value;
  return `${JSON.stringify(plan, inOrder, 2)}\n`;
}

/**
 * Reads what `writePlanFile` wrote, or says what stands in the way: nothing there, too long, not JSON (with line and
 * column), another program's file, a newer version, or any wrong field. All or nothing: a file is never half read.
 */
export function readPlanFile(text: string): Result<SavedPlan> {
  if (text.length > limits.characters)
    return failed({
      code: "too-large",
      where: "",
      message: `The file is ${text.length} characters long; this page reads at most ${limits.characters}.`,
    });
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (body.trim() === "")
    return failed({ code: "empty-file", where: "", message: "The file is empty; a plan file starts with {." });

  const parsed = parseJsonText(body);
  if (parsed.ok) return checkSavedPlan(parsed.value);
  if (body.trimStart().startsWith("{")) {
    const [problem] = parsed.problems;
    const cut = problem?.code === "text-cut-off" ? "The file is cut off. " : "The file is damaged. ";
    return failed(
      ...parsed.problems.map((each) => ({ ...each, message: `${cut}${each.message} Nothing of it was used.` })),
    );
  }
  return failed({
    code: "not-json",
    where: "line 1, column 1",
    message: `This is not a plan file: it starts with ${JSON.stringify(body.trimStart().slice(0, 20))}; a plan file starts with {.`,
  });
}
