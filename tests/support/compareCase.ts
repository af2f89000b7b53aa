import { type Complex, type Ground, portImpedances, solveWires } from "../../engine/index.ts";
import { okValue } from "./okValue.ts";
import type { ReferenceCase } from "./ReferenceCase.ts";
import { referenceProblem } from "./referenceProblem.ts";

/** What an engine with a reduced kernel may differ by, per class of wire (fixture perfectGround.json). */
export interface CaseTolerance {
  readonly leastLengthOverRadius: number;
  readonly conductance_rel: number;
  readonly conductance_rel_arrays: number;
  readonly Z_near_resonance_ohm: number;
  readonly Z_rel_off_resonance: number;
  readonly Z_rel_five_eighths: number;
  readonly mutual_Z_ohm: number;
  readonly current_ratio_abs: number;
  readonly directivity_dB: number;
  readonly front_to_back_dB: number;
}

export interface Comparison {
  readonly what: string;
  readonly error: number;
  readonly limit: number;
}

const C0 = 299_792_458;
const apart = (a: Complex, [re, im]: readonly [number, number]) => Math.hypot(a.re - re, a.im - im);
const over = (a: Complex, b: Complex): Complex => {
  const d = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / d, im: (a.im * b.re - a.re * b.im) / d };
};
const conductance = (re: number, im: number) => re / (re * re + im * im);

/** Solves a reference case and lists every quantity it states beside what the engine may differ by. */
export function compareCase(reference: ReferenceCase, tolerances: readonly CaseTolerance[]): Comparison[] {
  const { elements, results: want, frequency_hz } = reference;
  const ground: Ground = { kind: reference.freeSpace ? "free-space" : "perfect" };
  const slender = Math.min(...elements.map((e) => e.length_m / e.radius_m));
  const may = tolerances.find((t) => slender >= t.leastLengthOverRadius)!;
  const problem = referenceProblem(frequency_hz, ground, elements);
  const got = okValue(solveWires(problem));
  const out: Comparison[] = [];
  const add = (what: string, error: number, limit: number) => out.push({ what, error: Math.abs(error), limit });
  const loaded = elements.some((e) => e.base === "load");

  if (want.feed_R_ohm !== undefined) {
    const [R, X] = [want.feed_R_ohm, want.feed_X_ohm!];
    const z = got.ports[0]!.impedance_ohm;
    const size = Math.hypot(R, X);
    const height_wl = (elements[0]!.length_m * frequency_hz) / C0;
    const limit =
      Math.abs(X) < 60
        ? may.Z_near_resonance_ohm
        : size * (height_wl > 0.55 ? may.Z_rel_five_eighths : may.Z_rel_off_resonance);
    add("Z", apart(z, [R, X]), limit);
    const rel = elements.length > 1 ? may.conductance_rel_arrays : may.conductance_rel;
    add("conductance", conductance(z.re, z.im) / conductance(R, X) - 1, rel);
  }
  want.feed_impedance_each_ohm?.forEach((z, i) => {
    add(`Z of feed ${i}`, apart(got.ports[i]!.impedance_ohm, z), may.Z_near_resonance_ohm);
  });
  if (want.Z_matrix_ohm) {
    const m = okValue(portImpedances(problem));
    for (const [i, row] of want.Z_matrix_ohm.entries())
      for (const [j, z] of row.slice(0, i).entries()) add(`mutual Z ${i}${j}`, apart(m[i]![j]!, z), may.mutual_Z_ohm);
  }
  want.base_current_ratio?.forEach((ratio, i) => {
    const found = over(got.ports[i]!.current_A, got.ports[0]!.current_A);
    if (i > 0) add(`current ratio ${i}`, apart(found, ratio), loaded ? 0.013 : may.current_ratio_abs);
  });
  const efficiency = got.radiatedPower_W / got.inputPower_W;
  if (want.radiation_efficiency !== undefined) add("efficiency", efficiency - want.radiation_efficiency, 5e-4);
  const pattern = loaded ? 0.1 : undefined;
  want.elevation_deg?.forEach((e, i) => {
    const ahead = got.gain_dBi(e, 0) - 10 * Math.log10(efficiency);
    const behind = got.gain_dBi(e, 180) - 10 * Math.log10(efficiency);
    const [f, b] = [want.directivity_dBi_forward![i]!, want.directivity_dBi_backward![i]!];
    add(`directivity ahead at ${e}`, ahead - f, pattern ?? may.directivity_dB);
    add(`front-to-back at ${e}`, ahead - behind - (f - b), pattern ?? may.front_to_back_dB);
    const gain = want.gain_dBi_forward?.[i];
    if (gain !== undefined) add(`gain at ${e}`, got.gain_dBi(e, 0) - gain, may.directivity_dB);
  });
  return out;
}
