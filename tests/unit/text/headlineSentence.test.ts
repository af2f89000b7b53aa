import { describe, expect, test } from "vitest";
import type { Rung } from "../../../engine/index.ts";
import { headlineSentence } from "../../../src/text/headlineSentence.ts";
import { keepUnits } from "../../../src/text/keepUnits.ts";
import { powerInWords } from "../../../src/text/powerInWords.ts";
import { sUnitsInWords } from "../../../src/text/sUnitsInWords.ts";

const rung = (forward_dBi: number, back_dBi: number): Rung => ({
  elevation_deg: 8,
  forward_dBi,
  back_dBi,
  worstRear_dBi: back_dBi,
  worstRearAzimuth_deg: 180,
  frontToBack_dB: forward_dBi - back_dBi,
  frontToRear_dB: forward_dBi - back_dBi,
});

describe("powerInWords", () => {
  test.each([
    [0, "100 W"],
    [3.8, "240 W"],
    [-3, "50 W"],
    [10, "1 kW"],
    [10.8, "1.2 kW"],
    [-20, "1 W"],
    [9.99, "1 kW"],
    [-10.02, "10 W"],
  ])("%f dB is %s", (change_dB, said) => expect(powerInWords(change_dB)).toBe(said));
});

describe("sUnitsInWords", () => {
  test.each([
    [1.49, null],
    [1.5, "about half an S-unit"],
    [-5, "about 1 S-unit"],
    [8, "about 1½ S-units"],
    [-12, "about 2 S-units"],
    [-30, "about 5 S-units"],
  ])("%f dB: %s", (difference_dB, said) => expect(sUnitsInWords(difference_dB)).toBe(said));
});

describe("headlineSentence", () => {
  test("compares both directions with the baseline, and names the bearing with three digits", () => {
    expect(headlineSentence({ now: rung(3.8, -8), before: rung(0, 0), heading_deg: 62 })).toBe(
      "Toward 062° you are heard as if 100 W were 240 W; from straight behind, stations drop by about 1½ S-units (6 dB each).",
    );
  });

  test("says so when the design turns its back: less ahead, more behind", () => {
    expect(headlineSentence({ now: rung(-2, 3), before: rung(0, 0) })).toBe(
      "Straight ahead you are heard as if 100 W were 63 W; from straight behind, stations rise by about half an S-unit (6 dB each).",
    );
  });

  test("a design that is the baseline changes nothing", () => {
    expect(headlineSentence({ now: rung(1, 1), before: rung(1, 1) })).toBe(
      "Straight ahead you are heard just as before; from straight behind, stations hardly change.",
    );
  });

  test("a perfect null behind is not minus infinity S-units", () => {
    expect(headlineSentence({ now: rung(1, Number.NEGATIVE_INFINITY), before: rung(0, 0) })).toContain(
      "from straight behind, nothing is heard",
    );
  });

  test("without a baseline nothing is claimed about a gain", () => {
    const said = headlineSentence({ now: rung(1, -7), before: null, heading_deg: 300 });
    expect(said).toContain("Toward 300°, stations are about 1½ S-units (6 dB each) stronger than straight behind.");
    expect(said).not.toContain("W");
  });
});

test("no line may end between a number and its unit", () => {
  expect(keepUnits("as if 100 W were 1.2 kW, about 1½ S-units (6 dB each), over 8 meadows")).toBe(
    "as if 100\u00a0W were 1.2\u00a0kW, about 1½\u00a0S-units (6\u00a0dB each), over 8 meadows",
  );
});
