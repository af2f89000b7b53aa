import { wavelength_m } from "../units.ts";
import { checkBase } from "./checkBase.ts";
import { checkRadials } from "./checkRadials.ts";
import { checkStake } from "./checkStake.ts";
import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";
import { checkSlimness, diameterRule } from "./thickness.ts";

/** What rules between elements need to know of one; undefined where its own check failed. */
export interface ElementFacts {
  readonly index: number;
  readonly id: string | undefined;
  readonly fed: boolean;
  readonly forward_m: number | undefined;
  readonly left_m: number | undefined;
  readonly diameter_mm: number | undefined;
  readonly radialCount: number | undefined;
  readonly radialHeight_m: number | undefined;
}

/**
 * One element's own fields.
 * @param frequency_MHz undefined when the plan's frequency is unusable: limits in wavelengths are then left out
 */
export function checkElement(
  findings: Findings,
  element: Fields,
  index: number,
  frequency_MHz: number | undefined,
): ElementFacts {
  const where = `elements[${index}]`;
  const of = `of element ${index + 1}`;
  const wavelength = frequency_MHz === undefined ? undefined : wavelength_m(frequency_MHz);

  const id = findings.text(element, "id", where, `The id ${of}`, limits.id_characters);
  if (id === "") findings.add("empty-id", `${where}.id`, `The id ${of} is empty; it must have at least one character.`);

  const position = { least: -limits.position_m, most: limits.position_m, unit: "m" };
  const forward_m = findings.number(element, "forward_m", where, `The forward position ${of}`, position);
  const left_m = findings.number(element, "left_m", where, `The sideways position ${of}`, position);

  const height_m = findings.number(element, "height_m", where, `The height ${of}`, {
    ...(wavelength === undefined
      ? { above: 0, most: limits.length_m }
      : {
          least: limits.height_wl.least * wavelength,
          most: Math.min(limits.height_wl.most * wavelength, limits.length_m),
          because: `${limits.height_wl.least} to ${limits.height_wl.most} wavelengths, never over ${limits.length_m} m`,
        }),
    unit: "m",
  });
  const diameter_mm = findings.number(element, "diameter_mm", where, `The diameter ${of}`, diameterRule(wavelength));
  checkSlimness(findings, `${where}.diameter_mm`, `The diameter ${of}`, diameter_mm, height_m, "height");

  findings.choice(element, "conductor", where, `The conductor ${of}`, ["copper", "aluminium", "perfect"]);
  const fed = checkBase(findings, element, where, of);
  checkSeries(findings, element, where, of);
  const radials = checkRadials(findings, element, where, of, wavelength);
  checkStake(findings, element, where, of);
  return { index, id, fed, forward_m, left_m, diameter_mm, ...radials };
}

/** What readings have shown a base to add in series. */
function checkSeries(findings: Findings, element: Fields, where: string, of: string): void {
  if (element.baseSeries === undefined) return;
  const path = `${where}.baseSeries`;
  const series = findings.fields(element.baseSeries, path, `What is in series with the base ${of}`);
  if (!series) return;
  const rule = { ...limits.series_ohm, unit: "ohm" };
  findings.number(series, "resistance_ohm", path, `The resistance in series with the base ${of}`, rule);
  findings.number(series, "reactance_ohm", path, `The reactance in series with the base ${of}`, rule);
}
