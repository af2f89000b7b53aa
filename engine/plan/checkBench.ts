import { checkCable } from "./checkFeedline.ts";
import { checkGround } from "./checkGround.ts";
import { checkLog, checkText } from "./checkLog.ts";
import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";
import type { PlainData } from "./plainCopy.ts";

/** Notes what keeps a plan's readings, log, allowances, correction, declination and place from being used. */
export function checkBench(findings: Findings, plan: Fields): void {
  const where = "bench";
  const bench = findings.fields(plan.bench, where, "The bench");
  if (!bench) return;
  const own = limits.bench;
  if (bench.lead !== undefined) {
    const lead = findings.fields(bench.lead, `${where}.lead`, "The meter's lead");
    if (lead) {
      checkCable(findings, lead, `${where}.lead`);
      findings.number(lead, "length_m", `${where}.lead`, "The length of the lead", { ...own.leadLength_m, unit: "m" });
    }
  }
  if (bench.allowance !== undefined) {
    const allowance = findings.fields(bench.allowance, `${where}.allowance`, "The allowances");
    const rule = { ...own.allowance_percent, unit: "percent" };
    if (allowance)
      for (const [key, of] of [
        ["driven_percent", "the driven"],
        ["reflector_percent", "the reflector"],
        ["radial_percent", "radials"],
      ] as const)
        findings.number(allowance, key, `${where}.allowance`, `The allowance of ${of}`, rule);
  }
  each(findings, bench.readings, `${where}.readings`, "reading", own.readings, checkReading);
  each(findings, bench.log, `${where}.log`, "log entry", own.logEntries, checkLog);
  each(findings, bench.onAir, `${where}.onAir`, "pair", own.pairs, (pair, path, name) => {
    findings.number(pair, "forward_dB", path, `The level ahead of ${name}`, { ...own.level_dB, unit: "dB" });
    findings.number(pair, "reverse_dB", path, `The level behind of ${name}`, { ...own.level_dB, unit: "dB" });
  });
  if (bench.asMeasured !== undefined) checkAsMeasured(findings, bench.asMeasured, `${where}.asMeasured`);
  if (bench.declination_deg !== undefined)
    findings.number(bench, "declination_deg", where, "The declination", { ...own.declination_deg, unit: "degrees" });
  checkText(findings, bench, "declinationSource", where, "The declination's source");
  if (bench.location === undefined) return;
  const place = findings.fields(bench.location, `${where}.location`, "The place");
  if (!place) return;
  const degrees = (key: "latitude_deg" | "longitude_deg", name: string) =>
    findings.number(place, key, `${where}.location`, name, { ...own[key], unit: "degrees" });
  degrees("latitude_deg", "The latitude");
  degrees("longitude_deg", "The longitude");
}

/** Every item of a list that may be absent, up to a limit; ids, where items have them, must differ. */
function each(
  findings: Findings,
  held: PlainData | undefined,
  where: string,
  name: string,
  most: number,
  check: (item: Fields, path: string, name: string, findings: Findings) => void,
): void {
  if (held === undefined) return;
  const list = findings.list(held, where, `The list "${where.split(".").at(-1)}"`);
  if (!list) return;
  if (list.length > most)
    findings.add("too-many", where, `There are ${list.length} items of kind "${name}"; at most ${most} are kept.`);
  const ids = new Set<string>();
  for (const [i, one] of list.slice(0, most).entries()) {
    const path = `${where}[${i}]`;
    const item = findings.fields(one, path, `The ${name} ${i + 1}`);
    if (!item) continue;
    check(item, path, `${name} ${i + 1}`, findings);
    if (typeof item.id !== "string") continue;
    if (ids.has(item.id))
      findings.add(
        "duplicate-id",
        `${path}.id`,
        `Two items of kind "${name}" share the id ${JSON.stringify(item.id)}; each needs its own.`,
      );
    ids.add(item.id);
  }
}

function checkReading(reading: Fields, path: string, name: string, findings: Findings): void {
  findings.text(reading, "id", path, `The id of ${name}`, limits.id_characters);
  const states = ["driven-alone", "reflector-alone", "reflector-joined", "reversed"];
  findings.choice(reading, "state", path, `The state of ${name}`, states);
  findings.text(reading, "date", path, `The date of ${name}`, limits.id_characters);
  findings.choice(reading, "at", path, `The place of ${name}`, ["base", "lead"]);
  checkText(findings, reading, "remark", path, `The remark of ${name}`);
  const lengths = findings.fields(reading.lengths_m, `${path}.lengths_m`, `The lengths of ${name}`);
  const rule = { above: 0, most: limits.length_m, unit: "m" };
  if (lengths) {
    findings.number(lengths, "driven_m", `${path}.lengths_m`, `The driven's length at ${name}`, rule);
    if (lengths.reflector_m !== undefined)
      findings.number(lengths, "reflector_m", `${path}.lengths_m`, `The reflector's length at ${name}`, rule);
  }
  const points = findings.list(reading.points, `${path}.points`, `The points of ${name}`);
  if (!points) return;
  const most = limits.bench.pointsEach;
  if (points.length < 1 || points.length > most)
    findings.add("too-many", `${path}.points`, `${name} has ${points.length} points; it must have 1 to ${most}.`);
  const ohm = { least: -limits.bench.reading_ohm, most: limits.bench.reading_ohm, unit: "ohm" };
  for (const [i, one] of points.slice(0, most).entries()) {
    const at = `${path}.points[${i}]`;
    const point = findings.fields(one, at, `Point ${i + 1} of ${name}`);
    if (!point) continue;
    findings.number(point, "frequency_MHz", at, `The frequency of point ${i + 1} of ${name}`, {
      above: 0,
      most: 1e6,
      unit: "MHz",
    });
    findings.number(point, "resistance_ohm", at, `The resistance of point ${i + 1} of ${name}`, ohm);
    findings.number(point, "reactance_ohm", at, `The reactance of point ${i + 1} of ${name}`, ohm);
  }
}

function checkAsMeasured(findings: Findings, held: PlainData, where: string): void {
  const measured = findings.fields(held, where, "The correction by readings");
  if (!measured) return;
  findings.text(measured, "date", where, "The correction's date", limits.id_characters);
  if (measured.mutualScale !== undefined)
    findings.number(measured, "mutualScale", where, "The scale of the mutual impedance", limits.bench.mutualScale);
  // The ground is checked as a plan's is; its problems' paths start at the plan.
  if (measured.ground !== undefined) checkGround(findings, measured, where);
  const elements = findings.list(measured.elements, `${where}.elements`, "The corrected elements");
  for (const [i, one] of (elements ?? []).slice(0, limits.elements.most).entries()) {
    const path = `${where}.elements[${i}]`;
    const element = findings.fields(one, path, `Corrected element ${i + 1}`);
    if (!element) continue;
    findings.text(element, "elementId", path, `The id of corrected element ${i + 1}`, limits.id_characters);
    findings.number(
      element,
      "lengthFactor",
      path,
      `The length factor of corrected element ${i + 1}`,
      limits.bench.lengthFactor,
    );
    const series = findings.fields(
      element.series_ohm,
      `${path}.series_ohm`,
      `What is in series with corrected element ${i + 1}`,
    );
    if (!series) continue;
    const rule = { ...limits.series_ohm, unit: "ohm" };
    findings.number(series, "re", `${path}.series_ohm`, `The series resistance of corrected element ${i + 1}`, rule);
    findings.number(series, "im", `${path}.series_ohm`, `The series reactance of corrected element ${i + 1}`, rule);
  }
}
