import { describe, expect, test } from "vitest";
import { ETA0_ohm } from "../../engine/constants.ts";
import { type Complex, type ElementPlan, type Plan, solvePlan } from "../../engine/index.ts";
import { gaussLegendre } from "../../engine/quad/gaussLegendre.ts";
import { endVoltages } from "../../engine/readouts/endVoltages.ts";
import { solvePlanProblem } from "../../engine/solve/solvePlanProblem.ts";
import { okValue } from "../support/okValue.ts";

const driven: ElementPlan = {
  id: "driven",
  forward_m: 0,
  left_m: 0,
  height_m: 10.27,
  diameter_mm: 2,
  conductor: "perfect",
  base: { kind: "fed" },
  radials: { count: 16, length_m: 5, diameter_mm: 2, height_m: 0 },
};
const plan: Plan = {
  format: "hindwire-plan",
  version: 1,
  title: "tip voltages",
  frequency_MHz: 7.1,
  ground: { kind: "perfect" },
  soilModel: "full-wave",
  elements: [driven],
};
const k = (2 * Math.PI * 7.1) / 299.792458;

/**
 * ∫₀ʰ A ds over μ₀/4π of a current along an upright and its image: by panels that crowd round the singular point, a method
 * that shares nothing with the engine's moments and knows nothing of charges.
 *
 * @param current Re and Im at a height [A]
 */
function vectorVoltage(h: number, a: number, current: (z: number) => readonly [number, number]): Complex {
  const rule = gaussLegendre(12);
  let re = 0;
  let im = 0;
  const outer = 60;
  for (let p = 0; p < outer; p++)
    for (let i = 0; i < 12; i++) {
      const z = (h * (p + rule.node[i]!)) / outer;
      const w = (h * rule.weight[i]!) / outer;
      for (const side of [1, -1]) {
        const reach = side > 0 ? h - z : h + z;
        // Panels double from the wire's radius outwards: z' = z ± t, and the image is the other half of a line from −h to h.
        for (let from = 0, to = a; from < reach; from = to, to = Math.min(2 * to, reach))
          for (let j = 0; j < 12; j++) {
            const t = from + (to - from) * rule.node[j]!;
            const R = Math.hypot(t, a);
            const [p, q] = current(Math.abs(z + side * t));
            const v = (w * rule.weight[j]! * (to - from)) / R;
            re += v * (p * Math.cos(k * R) + q * Math.sin(k * R));
            im += v * (q * Math.cos(k * R) - p * Math.sin(k * R));
          }
      }
    }
  return { re, im };
}

describe("voltages at the ends of wires", () => {
  test("quarter wave: the trade's rule I·60(ln 2h/a − 1), from memory; a mean impedance, so within a twentieth", () => {
    for (const diameter_mm of [1, 2, 10, 40]) {
      const [one] = okValue(endVoltages({ ...plan, elements: [{ ...driven, diameter_mm }] }));
      const rule = 60 * (Math.log((2 * driven.height_m) / (diameter_mm / 2000)) - 1);
      expect(Math.abs(one!.tip_VPerA / rule - 1), `${diameter_mm} mm`).toBeLessThan(0.05);
    }
  });
  test("along a conductor dΦ/ds = −jωA: the tip by charges agrees with the base less the vector potential's part", () => {
    // The equation holds as a mean over each basis function, not at every point: what is left was 3e-5.
    for (const h of [9, 10.27, 11.5]) {
      const upright = { ...plan, elements: [{ ...driven, height_m: h }] };
      const { solved } = okValue(solvePlanProblem(upright));
      const { start, length, count } = solved.states.segments;
      const current = (z: number): readonly [number, number] => {
        let s = 0;
        while (s < count - 1 && z > start[3 * s + 2]! + length[s]!) s++;
        const u = (z - start[3 * s + 2]!) / length[s]!;
        const at = (c: number) => (1 - u) * solved.currents[4 * s + c]! + u * solved.currents[4 * s + 2 + c]!;
        return [at(0), at(1)];
      };
      const A = vectorVoltage(h, 1e-3, current);
      const scale = (ETA0_ohm * k) / (4 * Math.PI);
      const tip = Math.hypot(solved.volts[0]! + scale * A.im, solved.volts[1]! - scale * A.re);
      const amperes = Math.hypot(solved.amperes[0]!, solved.amperes[1]!);
      const [one] = okValue(endVoltages(upright));
      expect(Math.abs(one!.tip_VPerA / (tip / amperes) - 1), `${h} m`).toBeLessThan(3e-4);
    }
  });
  test("an open base stands off the mutual impedance times the driven's current; a load drops its own", () => {
    const behind = { ...driven, id: "reflector", forward_m: -8.4 };
    const open = okValue(endVoltages({ ...plan, elements: [driven, { ...behind, base: { kind: "open" } }] }));
    // 22.6 − j10.9 ohm for sinusoidal quarter waves a fifth of a wave apart (induced-EMF integral, textbook closed form,
    // from memory): 25 ohm in all.
    expect(open[1]!.base_VPerA).toBeGreaterThan(24);
    expect(open[1]!.base_VPerA).toBeLessThan(29);
    const base = { kind: "loaded", resistance_ohm: 0, reactance_ohm: 27 } as const;
    const loaded = { ...plan, elements: [driven, { ...behind, base }] };
    const ends = okValue(endVoltages(loaded));
    const { current } = okValue(solvePlan(loaded)).baseCurrents[1]!;
    expect(ends[1]!.base_VPerA).toBeCloseTo(27 * Math.hypot(current.re, current.im), 9);
  });
  test("radial ends over soil stand at volts, not kilovolts, and higher where there are few", () => {
    const ground = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
    const end = (count: number) => {
      const radials = { ...driven.radials, count, length_m: 10 };
      return okValue(endVoltages({ ...plan, ground, elements: [{ ...driven, radials }] }))[0]!;
    };
    const few = end(2);
    const many = end(16);
    expect(few.radialEnd_VPerA!).toBeGreaterThan(2 * many.radialEnd_VPerA!);
    expect(few.radialEnd_VPerA!).toBeLessThan(few.tip_VPerA);
    expect(many.tip_VPerA).toBeGreaterThan(400);
  });
});
