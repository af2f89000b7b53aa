import { describe, expect, test } from "vitest";
import { type Ladder, lineOfCable, lossWithSwr_dB, toReflection } from "../../../engine/index.ts";
import { matchSteps } from "../../../src/rooms/feed/smith/matchSteps.ts";
import { smithLayout } from "../../../src/rooms/feed/smith/smithLayout.ts";
import { stressFacts } from "../../../src/rooms/feed/stress/stressFacts.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";

const layout = smithLayout(420, 13, 50);
const numbers = (path: string) => path.match(/-?\d+(\.\d+)?/g)!.map(Number);
const from = ([x, y]: readonly [number, number], [u, v]: readonly [number, number]) => Math.hypot(x - u, y - v);

describe("the reflection chart", () => {
  test("coils above, short at the left, open at the right, the reference in the middle", () => {
    const at = (re: number, im: number) => layout.point(toReflection({ re, im }, 50));
    expect(at(50, 0)).toEqual(layout.hub);
    expect(at(50, 50)[1]).toBeLessThan(layout.hub[1]);
    expect(at(0, 0)[0]).toBeCloseTo(layout.hub[0] - layout.reach, 9);
    expect(at(Number.POSITIVE_INFINITY, 0)[0]).toBeCloseTo(layout.hub[0] + layout.reach, 9);
  });
  test("every impedance lies on the rules of its resistance and its reactance", () => {
    for (const r of [10, 25, 50, 100, 250])
      for (const x of [10, 25, 50, 100, 250, -10, -25, -50, -100, -250]) {
        const spot = layout.point(toReflection({ re: r, im: x }, 50));
        const [cx, cy, radius] = numbers(layout.rules.find((one) => one.id === `r${r / 50}`)!.path);
        // A circle's path begins at its left.
        expect(from(spot, [cx! + radius!, cy!])).toBeCloseTo(radius!, 0);
        const arc = layout.rules.find((one) => one.id === `x${x / 50}`)!;
        const [, , bend, , , , sweep, tx, ty] = numbers(arc.path);
        // Centre of an arc: over or under the open end, to which it runs.
        expect(sweep).toBe(x > 0 ? 0 : 1);
        expect(from(spot, [tx!, ty! - Math.sign(x) * bend!])).toBeCloseTo(bend!, 0);
      }
  });
  test("the ring of an SWR goes through R = S Z₀; the middle can be looked at larger", () => {
    const [x] = layout.point(toReflection({ re: 100, im: 0 }, 50));
    expect(layout.swrRadius(2)).toBeCloseTo(x - layout.hub[0], 9);
    const close = smithLayout(420, 13, 50, 3);
    expect(close.swrRadius(2)).toBeCloseTo(3 * layout.swrRadius(2), 9);
    expect(close.window).toBe(layout.window);
    for (const { mark } of close.rules) if (mark) expect(from(mark.at, close.hub)).toBeLessThan(close.window);
    expect(layout.rules.filter((rule) => rule.mark)).toHaveLength(15);
  });
  test("the steps of a match to read: from the feedpoint to what is wanted", () => {
    const ladder: Ladder = [{ kind: "series-coil", inductance_uH: 30 / (2 * Math.PI * 7) }];
    expect(matchSteps(ladder, 7, { re: 50, im: -30 }, 50, "metric")).toEqual([
      ["at the feedpoint", "50.0 − j30.0 Ω"],
      ["0.682 µH in series", "50.0 + j0.0 Ω"],
    ]);
  });
});

describe("powers, voltages, currents", () => {
  test("a matched lossless line: Ohm's law at both ends", () => {
    const { base, onLine, atBase_W } = okValue(stressFacts({ re: 50, im: 0 }, 7, aLine(50), 10, [], 200));
    expect(atBase_W).toBeCloseTo(200, 9);
    expect([base.base_Vrms, base.base_Arms]).toEqual([expect.closeTo(100, 9), expect.closeTo(2, 9)]);
    expect(onLine.lineMost_Vpeak).toBeCloseTo(100 * Math.SQRT2, 6);
  });
  test("all power is accounted for: line, parts and base sum to what the rig gives", () => {
    const line = okValue(lineOfCable({ kind: "listed", id: "rg-58c" }));
    const ladder: Ladder = [
      { kind: "series-coil", inductance_uH: 1, q: 60 },
      { kind: "shunt-capacitor", capacitance_pF: 300, q: 300 },
    ];
    const {
      atMatch_W,
      atBase_W,
      parts,
      line: through,
    } = okValue(stressFacts({ re: 22, im: -30 }, 7, line, 40, ladder, 100));
    const lost = parts.reduce((sum, part) => sum + part.dissipated_W, 0);
    // The handbooks' formula for a line of real impedance; RG-58's has a small angle.
    const formula_dB = lossWithSwr_dB(through.matchedLoss_dB, through.swrAtAntenna);
    expect(-10 * Math.log10(atMatch_W / 100)).toBeCloseTo(formula_dB, 1);
    expect(lost).toBeGreaterThan(0.5);
    expect(atBase_W + lost).toBeCloseTo(atMatch_W, 9);
  });
  test("the base's own current and voltage are for the power that reaches it", () => {
    const line = okValue(lineOfCable({ kind: "listed", id: "rg-58c" }));
    const { base, atBase_W } = okValue(stressFacts({ re: 20, im: 15 }, 7, line, 40, [], 100));
    expect(base.base_Arms ** 2 * 20).toBeCloseTo(atBase_W, 9);
    expect(base.base_Vrms).toBeCloseTo(base.base_Arms * 25, 9);
  });
  test("an antenna that takes no power is a problem, not a number", () => {
    expect(stressFacts({ re: -1, im: 0 }, 7, aLine(50), 10, [], 100).ok).toBe(false);
  });
});
