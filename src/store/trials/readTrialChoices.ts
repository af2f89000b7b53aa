import { firstChoices, type TrialChoices } from "./TrialChoices.ts";

/** Values of a choice that is one of a few words or numbers. */
const few: Readonly<Record<string, readonly unknown[]>> = {
  lengths: ["fixed", "retuned"],
  figure: ["forward", "frontToBack", "frontToRear", "swr"],
  soil: [1, 2, 3],
};

/** What was kept, part by part; what cannot be read, or is of another kind than it must be, is as it was at first. */
export function readTrialChoices(text: string | null): TrialChoices {
  let kept: unknown = null;
  try {
    kept = JSON.parse(text ?? "null");
  } catch {
    // Not ours or cut short.
  }
  const arrival = reach(kept, "arrival");
  const from_deg = reach(arrival, "from_deg");
  const to_deg = reach(arrival, "to_deg");
  return {
    ...(alike(firstChoices, kept) as TrialChoices),
    arrival: isNumber(from_deg) && isNumber(to_deg) && from_deg < to_deg ? { from_deg, to_deg } : null,
  };
}

/** `kept` where it has the shape of `first`; else `first`, part by part. */
function alike(first: unknown, kept: unknown, name = ""): unknown {
  if (few[name]) return few[name].includes(kept) ? kept : first;
  if (Array.isArray(first)) return isSpan(kept) ? kept : first;
  if (typeof first === "object" && first !== null)
    return Object.fromEntries(Object.entries(first).map(([key, one]) => [key, alike(one, reach(kept, key), key)]));
  // A bound that is not set, or is: the plan's check and the trial's own look at its value.
  if (first === null) return isNumber(kept) ? kept : null;
  if (name === "raised_m") return isNumber(kept) || kept === null ? kept : first;
  return isNumber(kept) ? kept : first;
}

const reach = (from: unknown, part: string): unknown =>
  typeof from === "object" && from !== null ? Reflect.get(from, part) : undefined;
const isSpan = (value: unknown) =>
  Array.isArray(value) && value.length === 2 && value.every(isNumber) && Number(value[0]) <= Number(value[1]);
const isNumber = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value);
