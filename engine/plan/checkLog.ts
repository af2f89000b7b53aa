import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";

/** What the ground was like, and how the other bases stood, as a log may say. */
export const groundStates = ["dry", "moist", "wet", "frozen", "snow"] as const;
export const otherBases = ["open", "joined", "loaded", "fed", "none"] as const;

/** One entry of the log. */
export function checkLog(entry: Fields, path: string, name: string, findings: Findings): void {
  const { bench } = limits;
  findings.text(entry, "id", path, `The id of ${name}`, limits.id_characters);
  findings.text(entry, "date", path, `The date of ${name}`, limits.id_characters);
  findings.text(entry, "fed", path, `The fed element of ${name}`, limits.id_characters);
  findings.choice(entry, "ground", path, `The ground of ${name}`, groundStates);
  findings.choice(entry, "others", path, `The other bases of ${name}`, otherBases);
  for (const [key, of] of [
    ["time", "time"],
    ["who", "name"],
    ["action", "action"],
    ["remark", "remark"],
  ] as const)
    checkText(findings, entry, key, path, `The ${of} of ${name}`);
  const number = (key: string, of: string, rule: Parameters<Findings["number"]>[4]) => {
    if (entry[key] !== undefined) findings.number(entry, key, path, `The ${of} of ${name}`, rule);
  };
  const MHz = { above: 0, most: 1e6, unit: "MHz" };
  const ohm = { least: -bench.reading_ohm, most: bench.reading_ohm, unit: "ohm" };
  number("frequency_MHz", "frequency", MHz);
  number("resonance_MHz", "resonance", MHz);
  number("resistance_ohm", "resistance", ohm);
  number("reactance_ohm", "reactance", ohm);
  number("swr", "SWR", bench.swr);
}

/** A text that may be absent. */
export function checkText(findings: Findings, from: Fields, key: string, where: string, name: string): void {
  if (from[key] !== undefined) findings.text(from, key, where, name, limits.bench.text_characters);
}
