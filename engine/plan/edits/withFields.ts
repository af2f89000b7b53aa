import type { FieldMeeting, Plan } from "../../contract.ts";

/** Changes how the radial fields meet; overlapping and not bonded is said by saying nothing. */
export function withFields<P extends Plan>(plan: P, change: Partial<FieldMeeting>): P {
  const { fields: before, ...rest } = plan;
  const fields = { radials: "overlap" as const, bonded: false, ...before, ...change };
  const usual = fields.radials === "overlap" && !fields.bonded;
  return (usual ? rest : { ...rest, fields }) as P;
}
