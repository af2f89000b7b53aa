import { expect, test } from "vitest";
import { type Plan, reflectorOf, solvePlan, withElementHeight, withRadials } from "../../../engine/index.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { okValue } from "../../support/okValue.ts";

test("a height that moves: solved from the factors of the plan before, the answer is the same as from none", {
  timeout: 60_000,
}, () => {
  const plan: Plan = { ...withRadials(demoPlan, { count: 8, length_m: 8 }), soilModel: "full-wave" };
  const { id } = reflectorOf(plan)!;
  const other: Plan = withRadials(plan, { count: 7, length_m: 5 });
  const read = (one: Plan) => {
    const { feeds, baseCurrents } = okValue(solvePlan(one));
    const z = feeds[0]!.impedance_ohm;
    const { current } = baseCurrents[1]!;
    return [z.re, z.im, current.re, current.im];
  };
  for (const height_m of [7.2, 7.5, 7.8]) {
    const moved = withElementHeight(plan, id, height_m);
    read(withElementHeight(plan, id, height_m + 0.1));
    const taken = read(moved);
    // After a plan of other radials nothing can be taken over.
    read(other);
    for (const [i, v] of read(moved).entries()) expect(v).toBeCloseTo(taken[i]!, 9);
  }
});
