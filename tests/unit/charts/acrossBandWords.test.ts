import { expect, test } from "vitest";
import type { BandReadout } from "../../../engine/index.ts";
import { acrossBandWords } from "../../../src/charts/acrossBandWords.ts";

const band: BandReadout = {
  frequency_MHz: [7, 7.1, 7.2, 7.3],
  feeds: [],
  beam: { elevation_deg: 8, forward_dBi: [-9, -1.94, -1.52, 3], frontToBack_dB: [0, 9.84, 8.12, 30] },
  interpolated: { solved_MHz: [7, 7.15, 7.3], error_ohm: 0.1, error_dB: 0.004 },
};

test("only what lies within the band counts; edges do; the check is told", () => {
  expect(acrossBandWords(band, 7.1, 7.2)).toBe(
    "Across the band, at 8°: forward −1.9 to −1.5 dBi, front-to-back 8.1 to 9.8 dB, by a curve through 3 frequencies, checked to 0.01 dB.",
  );
  const { interpolated: _, ...solved } = band;
  expect(acrossBandWords(solved, 7.1, 7.1)).toBe(
    "Across the band, at 8°: forward −1.9 to −1.9 dBi, front-to-back 9.8 to 9.8 dB.",
  );
});

test("nothing without a beam or a frequency within", () => {
  const { beam: _, ...feedOnly } = band;
  expect(acrossBandWords(feedOnly, 7, 8)).toBeNull();
  expect(acrossBandWords(band, 7.31, 7.4)).toBeNull();
});
