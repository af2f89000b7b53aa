import fc from "fast-check";
import { expect, test } from "vitest";
import { atBase, type BenchLead, type BenchPoint, throughLead } from "../../../engine/index.ts";
import { between } from "../../support/between.ts";
import { okValue } from "../../support/okValue.ts";

const point = (frequency_MHz: number, resistance_ohm: number, reactance_ohm: number): BenchPoint => ({
  frequency_MHz,
  resistance_ohm,
  reactance_ohm,
});
const own = (velocityFactor: number, loss: number): BenchLead["cable"] => ({
  kind: "own",
  impedance_ohm: 50,
  velocityFactor,
  loss: [
    { frequency_MHz: 1, loss_dBPer100m: loss },
    { frequency_MHz: 10, loss_dBPer100m: loss * Math.sqrt(10) },
  ],
});

test("through a lead and back is where it was (property)", () => {
  const points = fc.array(
    fc.record({ frequency_MHz: between(1.8, 30), resistance_ohm: between(1, 500), reactance_ohm: between(-500, 500) }),
    { minLength: 1, maxLength: 10 },
  );
  fc.assert(
    fc.property(points, between(0, 60), between(0.5, 1), between(0, 1), (read, length_m, v, loss) => {
      const lead = { cable: own(v, loss), length_m };
      const back = okValue(atBase(lead, okValue(throughLead(lead, read))));
      // Through L dB the antenna's reflection is 10^(−L/10) of what it was, and so is what rounding leaves of it.
      back.forEach((at, i) => {
        expect(at.resistance_ohm).toBeCloseTo(read[i]!.resistance_ohm, 5);
        expect(at.reactance_ohm).toBeCloseTo(read[i]!.reactance_ohm, 5);
      });
    }),
    { seed: 4711, numRuns: 200 },
  );
});

test("half a wave of cable without loss changes nothing; a quarter wave turns Z into 2500/Z (closed form)", () => {
  const wave_m = (0.66 * 299.792458) / 7.1;
  const lead = (parts: number): BenchLead => ({ cable: own(0.66, 0), length_m: parts * wave_m });
  const [half] = okValue(atBase(lead(0.5), [point(7.1, 40, 12)]));
  expect(half!.resistance_ohm).toBeCloseTo(40, 9);
  expect(half!.reactance_ohm).toBeCloseTo(12, 9);
  // 2500/(30 + j40) = 30 − j40.
  const [quarter] = okValue(atBase(lead(0.25), [point(7.1, 30, 40)]));
  expect(quarter!.resistance_ohm).toBeCloseTo(30, 9);
  expect(quarter!.reactance_ohm).toBeCloseTo(-40, 9);
});

test("a reading that no antenna behind that lead can give is refused by its frequency; a bad lead by its fields", () => {
  const lossy: BenchLead = { cable: own(0.66, 3), length_m: 50 };
  // 3 dB each way at 7 MHz and more: no reflection behind it can exceed a tenth.
  const bad = atBase(lossy, [point(7, 50, 0), point(7.1, 400, 10)]);
  expect(bad.ok ? [] : bad.problems).toMatchObject([{ code: "not-passive", where: "points[1]" }]);
  const wrong = atBase({ cable: own(1.2, 1), length_m: -1 }, []);
  expect(wrong.ok ? [] : wrong.problems.map((p) => p.where)).toEqual(["lead.length_m", "lead.cable.velocityFactor"]);
});
