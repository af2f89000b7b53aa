import { expect, test } from "vitest";
import type { TrialAsk } from "../../../engine/index.ts";
import { spreadAsks, worthTables } from "../../../src/worker/trial/spreadAsks.ts";
import { tablesKey } from "../../../src/worker/trial/tablesKey.ts";
import { quickPlan } from "./trialPlan.ts";

const directions = { elevations_deg: [8], azimuths_deg: [0, 180] };
const soil = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
const full = (frequency_MHz: number, title = ""): TrialAsk => ({
  plan: { ...quickPlan, title, ground: soil, soilModel: "full-wave" },
  frequency_MHz,
  directions,
});
const hand = (...asks: readonly TrialAsk[]) => ({ tables: new Set(asks.map(tablesKey)) });

test("a hand goes on with the tables it has, before those nobody has", () => {
  const waiting = [full(7.2), full(7.1), full(7.1), full(7)];
  expect(spreadAsks(waiting, hand(full(7.1)), [hand(full(7))], 9)).toEqual([waiting[1], waiting[2]]);
});

test("without any of its own it takes what no other hand has tables for", () => {
  const waiting = [full(7), full(7), full(7.2)];
  expect(spreadAsks(waiting, hand(), [hand(full(7))], 9)).toEqual([waiting[2]]);
});

test("another's tables are built once more only where enough waits for them", () => {
  const few = Array.from({ length: worthTables - 1 }, () => full(7));
  expect(spreadAsks(few, hand(), [hand(full(7))], 9)).toEqual([]);
  expect(spreadAsks([...few, full(7)], hand(), [hand(full(7))], 9)).toHaveLength(worthTables);
});

test("the quick model takes no tables: any hand will do; and no more than asked for", () => {
  const quick = Array.from({ length: 5 }, () => ({ plan: quickPlan, frequency_MHz: 7, directions }));
  expect(tablesKey(quick[0]!)).toBe("");
  expect(spreadAsks(quick, hand(), [hand(quick[0]!)], 3)).toHaveLength(3);
});
