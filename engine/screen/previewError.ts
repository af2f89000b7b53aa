import type { Plan } from "../contract.ts";
import { limits } from "../plan/limits.ts";
import { wavelength_m } from "../units.ts";
import table from "./previewErrors.json" with { type: "json" };

/** How far the preview may be from the full answer; sizes, without sign. */
export interface PreviewError {
  readonly resistance_ohm: number;
  readonly reactance_ohm: number;
  readonly gain_dB: number;
  /** For plans of more than one element. */
  readonly frontToBack_dB?: number;
}

/**
 * What the preview of a plan over soil is expected to be off by, from a table of both models: quarter-wave verticals, one
 * and with a reflector a fifth of a wavelength behind, over counts and lengths of radials, soils and frequencies, on the
 * soil and 5 cm in it. The largest error of the table's places around the plan, of the two soils most like its own; for
 * several elements the worst of their radial fields. Outside the table its edge counts.
 *
 * Null where the preview is exact or unknown: no soil, no radials, raised ones.
 */
export function previewError(plan: Plan): PreviewError | null {
  if (plan.ground.kind !== "soil") return null;
  if (plan.elements.some(({ radials }) => radials.height_m > limits.previewHeight_m)) return null;
  const isPair = plan.elements.length > 1;
  const rows: readonly (readonly number[] | null)[] = isPair ? table.pair : table.single;
  const worst = [0, 0, 0, 0];
  let found = false;
  for (const { radials } of plan.elements) {
    if (radials.count === 0) continue;
    const places = [
      soilsNear(plan.ground.relativePermittivity, plan.ground.conductivity_SPerM),
      around(table.frequency_MHz, plan.frequency_MHz),
      [radials.height_m < 0 ? 1 : 0],
      around(table.count, radials.count),
      around(table.length_wl, radials.length_m / wavelength_m(plan.frequency_MHz)),
    ];
    const sizes = [table.soil, table.frequency_MHz, table.height_m, table.count, table.length_wl].map((a) => a.length);
    for (const at of product(places)) {
      const row = rowAt(rows, sizes, at);
      if (!row) continue;
      found = true;
      row.forEach((error, i) => {
        worst[i] = Math.max(worst[i]!, Math.abs(error));
      });
    }
  }
  if (!found) return null;
  const [resistance_ohm, reactance_ohm, gain_dB, frontToBack_dB] = worst as [number, number, number, number];
  return { resistance_ohm, reactance_ohm, gain_dB, ...(isPair && { frontToBack_dB }) };
}

/** A place of the table; where it was not measured (very many long radials), that of the next smaller count. */
function rowAt(rows: readonly (readonly number[] | null)[], sizes: readonly number[], at: readonly number[]) {
  const [soil, f, height, count, length] = at as [number, number, number, number, number];
  for (let n = count; n >= 0; n--) {
    const row = rows[[soil, f, height, n, length].reduce((index, place, i) => index * sizes[i]! + place, 0)];
    if (row) return row;
  }
  return null;
}

/** Places of the ascending list on either side of a value; one where it lies outside or on one of them. */
function around(list: readonly number[], value: number): number[] {
  const on = list.findIndex((one) => Math.abs(one - value) < 1e-6 * one);
  if (on >= 0) return [on];
  const above = list.findIndex((one) => one > value);
  if (above === 0) return [0];
  return above < 0 ? [list.length - 1] : [above - 1, above];
}

/** The two soils most like this one, by the ratios of their constants. */
function soilsNear(permittivity: number, conductivity: number): number[] {
  const unlike = ([e, s]: readonly number[]) =>
    Math.log(e! / permittivity) ** 2 + Math.log(Math.max(s!, 1e-5) / Math.max(conductivity, 1e-5)) ** 2;
  const order = table.soil.map((_, i) => i).toSorted((i, j) => unlike(table.soil[i]!) - unlike(table.soil[j]!));
  return unlike(table.soil[order[0]!]!) < 1e-6 ? order.slice(0, 1) : order.slice(0, 2);
}

function product(lists: readonly (readonly number[])[]): number[][] {
  return lists.reduce<number[][]>((all, list) => all.flatMap((head) => list.map((next) => [...head, next])), [[]]);
}
