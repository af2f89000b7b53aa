import { expect, test } from "vitest";
import { readTrialChoices } from "../../../src/store/trials/readTrialChoices.ts";
import { firstChoices, type TrialChoices } from "../../../src/store/trials/TrialChoices.ts";

test("what was set comes back", () => {
  const set: TrialChoices = {
    ...firstChoices,
    arrival: { from_deg: 3, to_deg: 12 },
    pace: { from_wl: 0.1, to_wl: 0.3, lengths: "retuned" },
    map: { ...firstChoices.map, figure: "swr", mostSpacing_m: 5 },
    best: { ...firstChoices.best, spacing_wl: [0.1, 0.2], wire_m: 150 },
    radials: { wire_m: 80, raised_m: null },
  };
  expect(readTrialChoices(JSON.stringify(set))).toEqual(set);
});

test.each([
  ["nothing", null],
  ["no JSON", "{"],
  ["another thing", "[1,2]"],
  [
    "of another kind",
    '{"pace":{"from_wl":"far","to_wl":null,"lengths":"long"},"best":{"driven_wl":[0.3,0.2],"weights":7}}',
  ],
  ["not a number", '{"tolerance":{"soil":4,"draws":"many"},"map":{"figure":"beauty","swrLimit":null}}'],
  ["angles the wrong way about", '{"arrival":{"from_deg":9,"to_deg":3}}'],
])("%s: as at first, part by part", (_, text) => {
  expect(readTrialChoices(text)).toEqual(firstChoices);
});
