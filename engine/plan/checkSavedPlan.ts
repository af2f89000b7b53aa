import { failed, ok, type Result } from "../result.ts";
import { checkBench } from "./checkBench.ts";
import { checkFeedline } from "./checkFeedline.ts";
import { checkFormat } from "./checkFormat.ts";
import { checkPlanFields } from "./checkPlan.ts";
import { type Fields, Findings } from "./Findings.ts";
import { findNotFinite } from "./findNotFinite.ts";
import { limits } from "./limits.ts";
import { plainCopy } from "./plainCopy.ts";
import type { SavedPlan } from "./SavedPlan.ts";

/** As `checkPlan`, with site, band, interest, pins, baseline, remark, feed line and bench where they are there. Never throws. */
export function checkSavedPlan(candidate: unknown): Result<SavedPlan> {
  const copied = plainCopy(candidate);
  if (!copied.ok) return copied;
  const findings = new Findings();
  const plan = checkFormat(findings, copied.value);
  if (!plan) return failed(...findings.problems);

  checkPlanFields(findings, plan);
  if (plan.site !== undefined) checkSite(findings, plan);
  if (plan.band !== undefined) checkBand(findings, plan);
  if (plan.interest !== undefined) checkInterest(findings, plan);
  const pinIds = plan.pins === undefined ? [] : checkPins(findings, plan);
  if (plan.remark !== undefined) findings.text(plan, "remark", "", "The remark", limits.remark_characters);
  if (plan.baseline !== undefined) {
    const baseline = findings.text(plan, "baseline", "", "The baseline", limits.id_characters);
    if (baseline !== undefined && !pinIds.includes(baseline))
      findings.add("unknown-pin", "baseline", `The baseline is ${JSON.stringify(baseline)}; no pin has that id.`);
  }
  if (plan.feedline !== undefined) checkFeedline(findings, plan);
  if (plan.bench !== undefined) checkBench(findings, plan);
  findNotFinite(findings, plan);
  // Every field of SavedPlan has just been seen to be what its type says.
  return findings.problems.length > 0 ? failed(...findings.problems) : ok(plan as unknown as SavedPlan);
}

function checkSite(findings: Findings, plan: Fields): void {
  const site = findings.fields(plan.site, "site", "The site");
  if (!site) return;
  findings.number(site, "heading_deg", "site", "The beam's bearing", { ...limits.heading_deg, unit: "degrees" });
  findings.choice(site, "ituRegion", "site", "The ITU region", [1, 2, 3]);
}

function checkBand(findings: Findings, plan: Fields): void {
  const band = findings.fields(plan.band, "band", "The band");
  if (!band) return;
  findings.text(band, "label", "band", "The band's name", limits.title_characters);
  const edge = { ...limits.frequency_MHz, unit: "MHz" };
  const from = findings.number(band, "from_MHz", "band", "The band's lower edge", edge);
  const to = findings.number(band, "to_MHz", "band", "The band's upper edge", edge);
  if (from !== undefined && to !== undefined && from >= to)
    findings.add(
      "band-order",
      "band.to_MHz",
      `The band's upper edge is ${to} MHz; it must be above the lower edge, ${from} MHz.`,
    );
}

function checkInterest(findings: Findings, plan: Fields): void {
  const interest = findings.fields(plan.interest, "interest", "What to look at");
  if (!interest) return;
  const elevation = { ...limits.elevation_deg, unit: "degrees" };
  findings.number(interest, "elevation_deg", "interest", "The path's elevation", elevation);
  findings.number(interest, "azimuthCutElevation_deg", "interest", "The azimuth cut's elevation", elevation);
  const sector = { ...limits.sector_deg, unit: "degrees" };
  findings.number(interest, "rearSector_deg", "interest", "The rear sector's width", sector);
}

/** @returns the ids that could be read */
function checkPins(findings: Findings, plan: Fields): string[] {
  const pins = findings.list(plan.pins, "pins", "The list of pinned designs");
  if (!pins) return [];
  if (pins.length > limits.pins)
    findings.add("too-many-pins", "pins", `${pins.length} designs are pinned; at most ${limits.pins} are kept.`);
  const ids: string[] = [];
  for (const [index, held] of pins.slice(0, limits.pins).entries()) {
    const where = `pins[${index}]`;
    const pin = findings.fields(held, where, `Pin ${index + 1}`);
    if (!pin) continue;
    const id = findings.text(pin, "id", where, `The id of pin ${index + 1}`, limits.id_characters);
    if (id === "") findings.add("empty-id", `${where}.id`, `The id of pin ${index + 1} is empty.`);
    if (id !== undefined && ids.includes(id))
      findings.add("duplicate-id", `${where}.id`, `Two pins share the id ${JSON.stringify(id)}; each needs its own.`);
    if (id !== undefined) ids.push(id);
    findings.text(pin, "name", where, `The name of pin ${index + 1}`, limits.title_characters);

    const inner = new Findings();
    const pinned = findings.fields(pin.plan, `${where}.plan`, `The plan of pin ${index + 1}`);
    if (!pinned) continue;
    const fields = checkFormat(inner, pinned);
    if (fields) checkPlanFields(inner, fields);
    for (const { code, where: path, message } of inner.problems)
      findings.add(code, `${where}.plan.${path}`, `In pin ${index + 1}: ${message}`);
  }
  return ids;
}
