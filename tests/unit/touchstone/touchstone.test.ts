import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type FrequencyUnit,
  type OnePortParameter,
  type PairFormat,
  predictionFile,
  readTouchstone,
  type TouchstonePoint,
  toReflection,
  writeTouchstone,
} from "../../../engine/index.ts";
import fixture from "../../fixtures/network/touchstone.json" with { type: "json" };
import { between } from "../../support/between.ts";
import { condition } from "../../support/condition.ts";
import { excess } from "../../support/excess.ts";
import { okValue } from "../../support/okValue.ts";
import { rowsOf } from "../../support/rowsOf.ts";

const units: readonly FrequencyUnit[] = ["Hz", "kHz", "MHz", "GHz"];
const perMHz = { Hz: 1e6, kHz: 1e3, MHz: 1, GHz: 1e-3 };
const parameters: readonly OnePortParameter[] = ["S", "Z", "Y"];
const formats: readonly PairFormat[] = ["RI", "MA", "DB"];
const versions = ["1", "2.0", "2.1"] as const;

const worked = rowsOf(fixture, "11-01", "11-02", "11-03");
const listed = (row: (typeof worked)[number]) => row.value as readonly [number, number, number, number, number];
const load = (row: (typeof worked)[number]) => ({
  re: condition(row, "load_re_ohm"),
  im: condition(row, "load_im_ohm"),
});

const problemsOf = (text: string) => {
  const read = readTouchstone(text);
  return read.ok ? [] : read.problems;
};
const pointsOf = (text: string) => okValue(readTouchstone(text)).points;

describe("worked rows, computed outside the project", () => {
  test.each(worked.map((row) => [row.id, row] as const))("reflection of a load, row %s", (_, row) => {
    const { re, im } = toReflection(load(row), 50);
    const size = Math.hypot(re, im);
    expect(excess(row, [re, im, size, (Math.atan2(im, re) * 180) / Math.PI, 20 * Math.log10(size)])).toBeLessThan(1);
  });

  // The rows print six decimals of Γ (angle: four): Z = 50 (1 + Γ)/(1 − Γ) turns an error of 1e-6 into at most
  // 100/|1 − Γ|² × 1e-6 < 1e-4 ohm here (|1 − Γ| > 1); half of 1e-4 degrees at |Γ| 0.43 is 4e-7, of 1e-4 dB 2.5e-6.
  const near_ohm = 3e-4;
  test.each(formats)("a file of the three rows in %s reads as the three loads", (format) => {
    const lines = worked.map((row) => {
      const [re, im, size, angle, dB] = listed(row);
      const pair = format === "RI" ? [re, im] : [format === "MA" ? size : dB, angle];
      return [condition(row, "frequency_hz"), ...pair].join(" ");
    });
    const points = pointsOf(["! three loads", `# Hz S ${format} R 50`, ...lines].join("\n"));
    expect(points.map((p) => p.frequency_MHz)).toEqual([7, 7.1, 7.3]);
    points.forEach(({ impedance_ohm }, i) => {
      expect(Math.abs(impedance_ohm.re - load(worked[i]!).re)).toBeLessThan(near_ohm);
      expect(Math.abs(impedance_ohm.im - load(worked[i]!).im)).toBeLessThan(near_ohm);
    });
  });
});

describe("what the standard says", () => {
  const ZERO = "# MHz S RI R 50\n7 0 0\n";
  test("a bare option line means GHz S MA R 50 (row 11-13)", () => {
    const file = okValue(readTouchstone("#\n0.007 0.5 90\n"));
    expect(file.options).toEqual({ unit: "GHz", parameter: "S", format: "MA", reference_ohm: 50 });
    // Γ = j/2: Z = 50 (1 + j/2)/(1 − j/2) = 30 + j40.
    expect(file.points[0]!.frequency_MHz).toBeCloseTo(7, 12);
    expect(file.points[0]!.impedance_ohm.re).toBeCloseTo(30, 12);
    expect(file.points[0]!.impedance_ohm.im).toBeCloseTo(40, 12);
  });

  test("either case, tabs, any line end, comments anywhere, an empty end (rows 11-10, 11-14)", () => {
    for (const end of ["\n", "\r\n", "\r"]) {
      const text = ["! head", "#\thz\ts  ri r 75 ! option", "", "7000000\t0\t0 ! match", "  7.1E6 0 0  ", ""].join(end);
      const file = okValue(readTouchstone(text));
      expect(file.points.map(({ impedance_ohm }) => impedance_ohm.re)).toEqual([75, 75]);
      expect(file.points.map((p) => p.frequency_MHz)).toEqual([7, 7.1]);
      expect(file.comments).toEqual(["head", "option", "match"]);
    }
    expect(okValue(readTouchstone(`\uFEFF${ZERO}`)).points).toHaveLength(1);
  });

  test("the parts of the option line stand in any order", () => {
    expect(okValue(readTouchstone("# R 75 RI Z kHz\n7100 0.5 -0.25\n"))).toMatchObject({
      options: { unit: "kHz", parameter: "Z", format: "RI", reference_ohm: 75 },
      points: [{ frequency_MHz: 7.1, impedance_ohm: { re: 37.5, im: -18.75 } }],
    });
  });

  test("a second option line is passed over, and that is said (row 11-14)", () => {
    const file = okValue(readTouchstone("# MHz S RI R 50\n7 0 0\n# Hz Z MA R 75\n8 0 0\n"));
    expect(file.points.map((p) => p.frequency_MHz)).toEqual([7, 8]);
    expect(file.notes).toMatchObject([{ code: "second-option-line", measured: 3 }]);
  });

  test("version 1 normalises Z and Y to R, version 2 does not (row 11-16)", () => {
    const v2 = (parameter: string, pair: string) =>
      `[Version] 2.0\n# MHz ${parameter} RI R 50\n[Number of Ports] 1\n[Number of Frequencies] 1\n[Network Data]\n7 ${pair}\n[End]\n`;
    const z = (text: string) => pointsOf(text)[0]!.impedance_ohm;
    expect(z("# MHz Z RI R 50\n7 0.5 0.1\n")).toEqual({ re: 25, im: 5 });
    expect(z(v2("Z", "25 5"))).toEqual({ re: 25, im: 5 });
    expect(z("# MHz Y RI R 50\n7 2 0\n").re).toBeCloseTo(25, 12);
    expect(z(v2("Y", "0.04 0")).re).toBeCloseTo(25, 12);
  });

  test("version 2: the reference may stand on the next line, and wins over the option line", () => {
    const text =
      "! v2\n[version] 2.1\n# mhz s ri\n[number of ports] 1\n[Number of Frequencies] 2\n[Reference]\n75\n[Matrix Format] Full\n" +
      "[Begin Information]\n[Author] somebody\nfree text\n[End Information]\n[Network Data]\n7 0 0\n8 0 0\n[End]\nanything\n";
    const file = okValue(readTouchstone(text));
    expect(file).toMatchObject({ version: "2.1", options: { reference_ohm: 75 } });
    expect(file.points.map(({ impedance_ohm }) => impedance_ohm.re)).toEqual([75, 75]);
    expect(file.notes).toMatchObject([{ code: "section-passed-over" }]);
  });
});

describe("bad files are named by line, all at once", () => {
  test.each([
    ["", "no-option-line", 1],
    ["! only words\n", "no-option-line", 1],
    ["# MHz\n", "no-data", 2],
    ["7 0 0\n", "no-option-line", 1],
    ["# MHz S RI R 50\n7 0\n", "wrong-count", 2],
    ["# MHz S RI R 50\n7 0 0 0 0 0 0 0 0\n", "wrong-count", 2],
    ["# MHz S RI R 50\n7 0 1,5\n", "not-a-number", 2],
    ["# MHz S RI R 50\n7 nan 0\n", "not-a-number", 2],
    ["# MHz S RI R 50\n7 1e999 0\n", "not-a-number", 2],
    ["# MHz S RI R 50\n7 0 0\n7 0 0\n", "not-rising", 3],
    ["# MHz S RI R 50\n-7 0 0\n", "below-zero", 2],
    ["# MHz S RI R 50\n7 1 0\n", "no-impedance", 2],
    ["# MHz Y RI R 50\n7 0 0\n", "no-impedance", 2],
    ["# MHz H RI R 50\n7 0 0\n", "not-one-port", 1],
    ["# furlongs\n7 0 0\n", "unknown-option", 1],
    ["# MHz S RI R -50\n7 0 0\n", "bad-reference", 1],
    ["# MHz S RI R\n7 0 0\n", "bad-reference", 1],
    ["# MHz GHz\n7 0 0\n", "twice", 1],
    ["# MHz S RI R 50\n7 0 0\n[End]\n", "keyword-without-version", 3],
    ["[Version] 3.0\n# MHz\n7 0 0\n", "unknown-version", 1],
    [
      "[Version] 2.0\n# MHz S RI\n[Number of Ports] 2\n[Number of Frequencies] 1\n[Network Data]\n7 0 0\n[End]\n",
      "not-one-port",
      3,
    ],
    [
      "[Version] 2.0\n# MHz S RI\n[Number of Ports] 1\n[Number of Frequencies] 2\n[Network Data]\n7 0 0\n[End]\n",
      "wrong-frequencies",
      8,
    ],
    ["[Version] 2.0\n# MHz S RI\n[Number of Ports] 1\n[Number of Frequencies] 1\n[Network Data]\n7 0 0\n", "no-end", 7],
    ["[Version] 2.0\n# MHz S RI\n[Number of Ports] 1\n[Number of Frequencies] 1\n7 0 0\n[End]\n", "no-network-data", 5],
    ["[Version] 2.0\n# MHz S RI\n[Port Count] 1\n", "unknown-keyword", 3],
  ])("%j is refused as %s at line %i", (text, code, line) => {
    expect(problemsOf(text)).toContainEqual(expect.objectContaining({ code, where: `line ${line}` }));
    expect(problemsOf(text).find((p) => p.code === code)!.message).toMatch(new RegExp(`^Line ${line}: `));
  });

  test("three bad lines give three problems; two hundred give fifty and a count", () => {
    expect(problemsOf("# MHz S RI R 50\n7 0\n8 x 0\n9 0 0\n10 0 0 0\n").map((p) => p.where)).toEqual([
      "line 2",
      "line 3",
      "line 5",
    ]);
    const many = problemsOf(`# MHz\n${"bad\n".repeat(200)}`);
    expect(many).toHaveLength(51);
    expect(many.at(-1)!.message).toContain("150 more");
  });
});

describe("what is written is read", () => {
  const points: readonly TouchstonePoint[] = [
    { frequency_MHz: 6.9, impedance_ohm: { re: 41.25, im: -23.5 } },
    { frequency_MHz: 7.123456, impedance_ohm: { re: 50, im: 0 } },
    { frequency_MHz: 7.3, impedance_ohm: { re: 0.5, im: 300 } },
  ];
  const cases = versions.flatMap((version) =>
    units.flatMap((unit) =>
      parameters.flatMap((parameter) =>
        formats.flatMap((format) => [50, 75, 12.5].map((r) => [version, unit, parameter, format, r] as const)),
      ),
    ),
  );
  test.each(cases)("version %s, %s %s %s R %d", (version, unit, parameter, format, reference_ohm) => {
    const options = { unit, parameter, format, reference_ohm };
    const text = okValue(writeTouchstone({ points, options, version, comments: ["of any kind"] }));
    const file = okValue(readTouchstone(text));
    expect(file).toMatchObject({ version, options, comments: ["of any kind"] });
    expect(text.includes("[End]")).toBe(version !== "1");
    file.points.forEach(({ frequency_MHz, impedance_ohm }, i) => {
      const wanted = points[i]!;
      expect(Math.abs(frequency_MHz - wanted.frequency_MHz)).toBeLessThan(1e-11 * perMHz.MHz * 10);
      // Twelve figures; of Γ that is 1e-12, and Z moves by |Z + R|²/2R times that: below 1e-8 for 300 ohm on 12.5.
      const off = Math.hypot(impedance_ohm.re - wanted.impedance_ohm.re, impedance_ohm.im - wanted.impedance_ohm.im);
      expect(off).toBeLessThan(1e-8);
    });
  });

  test("any passive sweep, any options (property)", () => {
    const impedances = fc.array(fc.record({ re: between(0.1, 2000), im: between(-2000, 2000) }), {
      minLength: 1,
      maxLength: 20,
    });
    const options = fc.record({
      unit: fc.constantFrom(...units),
      parameter: fc.constantFrom(...parameters),
      format: fc.constantFrom(...formats),
      reference_ohm: between(10, 300),
    });
    fc.assert(
      fc.property(impedances, options, fc.constantFrom(...versions), (zs, chosen, version) => {
        const given = zs.map((impedance_ohm, i) => ({ frequency_MHz: 1.8 + 0.01 * i, impedance_ohm }));
        const back = pointsOf(okValue(writeTouchstone({ points: given, options: chosen, version, comments: [] })));
        for (const [i, { impedance_ohm: z }] of given.entries()) {
          // Three roundings of half the twelfth figure and the angle's 180°: 2e-11 of Γ at most.
          const r = chosen.reference_ohm;
          const bound = 2e-11 * ((z.re + r) ** 2 + z.im ** 2) * (1 / (2 * r) + 1 / Math.hypot(z.re, z.im)) + 1e-10;
          expect(Math.hypot(back[i]!.impedance_ohm.re - z.re, back[i]!.impedance_ohm.im - z.im)).toBeLessThan(bound);
        }
      }),
      { seed: 1117, numRuns: 300 },
    );
  });

  test("a prediction says so in its first line, with the date it is given", () => {
    const text = okValue(predictionFile(points, "Pair – “back lawn”, driven alone", "2026-05-01"));
    expect(text.split("\n")[0]).toBe("! Prediction, not a measurement. Calculated 2026-05-01.");
    expect(text).toMatch(/^[ -~\n]*$/);
    expect(pointsOf(text)).toHaveLength(3);
  });

  test("what cannot be written is refused, all at once", () => {
    const bad = writeTouchstone({
      points: [
        { frequency_MHz: 7, impedance_ohm: { re: Number.NaN, im: 0 } },
        { frequency_MHz: 7, impedance_ohm: { re: 0, im: 0 } },
      ],
      options: { unit: "MHz", parameter: "Y", format: "RI", reference_ohm: 0 },
      comments: [],
    });
    expect(bad.ok ? [] : bad.problems.map((p) => p.code)).toEqual([
      "out-of-range",
      "not-finite",
      "not-rising",
      "not-finite",
    ]);
  });
});

test("ten thousand broken files: refused with a line number or read whole, never a throw", { timeout: 60_000 }, () => {
  const good = okValue(
    writeTouchstone({
      points: Array.from({ length: 12 }, (_, i) => ({
        frequency_MHz: 7 + i / 50,
        impedance_ohm: { re: 40 + i, im: 3 * i },
      })),
      options: { unit: "MHz", parameter: "S", format: "RI", reference_ohm: 50 },
      version: "2.0",
      comments: ["fuzz"],
    }),
  );
  const scraps = [
    "[",
    "]",
    "#",
    "!",
    "\r",
    "\n",
    "\t",
    "R",
    "nan",
    "1e999",
    "-",
    "\u0000",
    "é",
    " ",
    "[End]",
    "[Reference]",
    "9 9 9",
    "[Version] 2.0",
  ];
  // A small linear congruential generator, so that the same ten thousand come each time.
  let state = 20_261_117;
  const below = (n: number) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 4_294_967_296) * n);
  };
  let refused = 0;
  for (let n = 0; n < 10_000; n++) {
    let text = below(2) ? good : good.replace(/\[.*\n/g, "").replace("[End]\n", "");
    for (let k = 1 + below(4); k > 0; k--) {
      const at = below(text.length + 1);
      const way = below(4);
      if (way === 0) text = text.slice(0, at) + text.slice(at + 1 + below(30));
      else if (way === 1) text = text.slice(0, at) + scraps[below(scraps.length)]! + text.slice(at);
      else if (way === 2) text = text.slice(0, at);
      else text = text.slice(0, at) + String.fromCharCode(below(256)) + text.slice(at + 1);
    }
    const read = readTouchstone(text);
    const lines = text.split(/\r\n|\n|\r/).length;
    if (read.ok) {
      for (const { impedance_ohm, frequency_MHz } of read.value.points)
        expect(Number.isFinite(impedance_ohm.re + impedance_ohm.im + frequency_MHz)).toBe(true);
      continue;
    }
    refused++;
    expect(read.problems.length).toBeGreaterThan(0);
    for (const { where } of read.problems) {
      const line = Number(/^line (\d+)$/.exec(where)?.[1]);
      expect(line >= 1 && line <= lines).toBe(true);
    }
  }
  // Most of this damage cannot be read; were all of it taken, the checks above would have seen nothing.
  expect(refused).toBeGreaterThan(5000);
});
