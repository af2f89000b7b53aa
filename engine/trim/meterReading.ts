import type { Complex, ElementBase, Plan } from "../contract.ts";
import { solveGeneral } from "../linalg/solveGeneral.ts";
import { cx } from "../network/cx.ts";
import type { BenchState } from "../plan/PlanBench.ts";
import type { BenchRoles } from "./benchRoles.ts";

/** Impedance matrix of all bases in plan order [ohm]. */
export type BaseMatrix = readonly (readonly Complex[])[];

export interface MeterReading {
  readonly impedance_ohm: Complex;
  /** Base currents of all elements for 1 A at the meter, in plan order. */
  readonly currents: readonly Complex[];
}

/**
 * What a meter at a base reads in one state: Z_m − Z_mu (Z_uu + Z_load)⁻¹ Z_um over the bases that are connected, and the
 * currents that flow in them. With one connected base it is Z₁ = Z₁₁ − Z₁₂²/(Z₂₂ + Z_load). Accuracy: rounding.
 *
 * @throws RangeError for a state with a reflector where the plan has none
 */
export function meterReading(plan: Plan, roles: BenchRoles, matrix: BaseMatrix, state: BenchState): MeterReading {
  const meter = meterAt(roles, state);
  const connected = plan.elements.flatMap(({ base }, i) => {
    if (i === meter || state === "driven-alone" || state === "reflector-alone") return [];
    // Reversed: the driven takes the reflector's place.
    const acting = state === "reversed" && i === roles.driven ? plan.elements[roles.reflector!]!.base : base;
    const load = loadOf(acting);
    return load ? [{ i, load }] : [];
  });
  const n = connected.length;
  const inner = new Float64Array(2 * n * n);
  const rhs = new Float64Array(2 * n);
  connected.forEach(({ i, load }, p) => {
    connected.forEach(({ i: j }, q) => {
      const z = matrix[i]![j]!;
      inner[2 * (p * n + q)] = z.re + (p === q ? load.re : 0);
      inner[2 * (p * n + q) + 1] = z.im + (p === q ? load.im : 0);
    });
    rhs[2 * p] = -matrix[i]![meter]!.re;
    rhs[2 * p + 1] = -matrix[i]![meter]!.im;
  });
  const solved = solveGeneral(inner, n, rhs, 1);
  const currents: Complex[] = plan.elements.map((_, i) => (i === meter ? cx.one : cx.zero));
  let impedance_ohm: Complex = matrix[meter]![meter]!;
  connected.forEach(({ i }, p) => {
    const current = cx.of(solved[2 * p]!, solved[2 * p + 1]!);
    currents[i] = current;
    impedance_ohm = cx.add(impedance_ohm, cx.mul(matrix[meter]![i]!, current));
  });
  return { impedance_ohm, currents };
}

/** The element whose base the meter is at. */
export function meterAt({ driven, reflector }: BenchRoles, state: BenchState): number {
  if (state === "driven-alone" || state === "reflector-joined") return driven;
  if (reflector === undefined) throw new RangeError(`meterAt: no reflector for "${state}"`);
  return reflector;
}

/** What stands between a base and its ground when it is not the meter's; undefined: nothing is connected. */
function loadOf(base: ElementBase): Complex | undefined {
  if (base.kind === "loaded") return cx.of(base.resistance_ohm, base.reactance_ohm);
  return base.kind === "joined" ? cx.zero : undefined;
}
