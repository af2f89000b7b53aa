import type { Result } from "../../engine/index.ts";

/** The value of a result; throws its problems where there is none. */
export function okValue<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map((p) => `${p.code} at ${p.where}: ${p.message}`).join("\n"));
  return result.value;
}
