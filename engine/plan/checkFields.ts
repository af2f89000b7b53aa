import type { Fields, Findings } from "./Findings.ts";

/** How the radial fields meet, where the plan says so. */
export function checkFields(findings: Findings, plan: Fields): void {
  if (plan.fields === undefined) return;
  const fields = findings.fields(plan.fields, "fields", "How the radial fields meet");
  if (!fields) return;
  findings.choice(fields, "radials", "fields", "How radials of two elements meet", ["overlap", "stop", "bus"]);
  findings.choice(fields, "bonded", "fields", "Whether a wire joins the bases", [true, false]);
}
