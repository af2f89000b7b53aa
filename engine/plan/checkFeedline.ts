import { lineTypes } from "../network/line/lineTypes.ts";
import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";

/** Notes what keeps a plan's feed line, powers, part qualities and choices of match, pair and reversal from being used. */
export function checkFeedline(findings: Findings, plan: Fields): void {
  const where = "feedline";
  const line = findings.fields(plan.feedline, where, "The feed line");
  if (!line) return;
  checkCable(findings, line, where);
  const { feedline } = limits;
  findings.number(line, "length_m", where, "The length of the feed line", { ...feedline.length_m, unit: "m" });
  const sectionId = findings.text(line, "sectionId", where, "The cable for sections", limits.id_characters);
  if (sectionId !== undefined) checkListed(findings, `${where}.sectionId`, "The cable for sections", sectionId);
  findings.number(line, "power_W", where, "The power", { ...feedline.power_W, unit: "W" });
  findings.number(line, "swrLimit", where, "The SWR limit", feedline.swrLimit);
  findings.number(line, "coilQ", where, "The Q of coils", feedline.q);
  findings.number(line, "capacitorQ", where, "The Q of capacitors", feedline.q);
  if (line.match !== undefined) findings.text(line, "match", where, "The chosen match", feedline.match_characters);
  if (line.pair !== undefined) checkPairChoice(findings, line);
  if (line.reversal !== undefined) checkReversalChoice(findings, line);
}

/** The cable that a group of fields holds. @param holder path of that group */
export function checkCable(findings: Findings, line: Fields, holder: string): void {
  const where = `${holder}.cable`;
  const cable = findings.fields(line.cable, where, "The cable");
  if (!cable) return;
  const kind = findings.choice(cable, "kind", where, "The kind of cable", ["listed", "own"]);
  if (kind === "listed") {
    const id = findings.text(cable, "id", where, "The cable's id", limits.id_characters);
    if (id !== undefined) checkListed(findings, `${where}.id`, "The cable", id);
  }
  if (kind !== "own") return;
  const { feedline } = limits;
  findings.number(cable, "impedance_ohm", where, "The impedance of the cable", {
    ...feedline.impedance_ohm,
    unit: "ohm",
  });
  findings.number(cable, "velocityFactor", where, "The velocity factor", feedline.velocityFactor);
  const loss = findings.list(cable.loss, `${where}.loss`, "The cable's losses");
  if (!loss) return;
  if (loss.length !== 2)
    findings.add("wrong-count", `${where}.loss`, `The cable states ${loss.length} losses; it must state 2.`);
  for (const [i, one] of loss.slice(0, 2).entries()) {
    const at = `${where}.loss[${i}]`;
    const point = findings.fields(one, at, `Loss ${i + 1} of the cable`);
    if (!point) continue;
    const rule = { ...limits.feedline.lossFrequency_MHz, unit: "MHz" };
    findings.number(point, "frequency_MHz", at, `The frequency of loss ${i + 1}`, rule);
    findings.number(point, "loss_dBPer100m", at, `Loss ${i + 1} of the cable`, {
      ...limits.feedline.loss_dBPer100m,
      unit: "dB per 100 m",
    });
  }
}

function checkListed(findings: Findings, path: string, name: string, id: string): void {
  if (!lineTypes.some((type) => type.id === id))
    findings.add("unknown-cable", path, `${name} is ${JSON.stringify(id)}; the table has no cable of that id.`);
}

function checkPairChoice(findings: Findings, line: Fields): void {
  const where = "feedline.pair";
  const pair = findings.fields(line.pair, where, "The fed pair");
  if (!pair) return;
  findings.number(pair, "magnitude", where, "The current ratio", limits.feedline.ratio);
  findings.number(pair, "phase_deg", where, "The phase", { ...limits.feedline.phase_deg, unit: "degrees" });
  findings.choice(pair, "asDrawn", where, "Whether the elements are as drawn", [true, false]);
}

function checkReversalChoice(findings: Findings, line: Fields): void {
  const where = "feedline.reversal";
  const reversal = findings.fields(line.reversal, where, "The reversal");
  if (!reversal) return;
  findings.choice(reversal, "goal", where, "What the load is chosen for", ["front-to-back", "as-now"]);
  findings.choice(reversal, "load", where, "The kind of load", ["part", "stub"]);
}
