import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { longestQuantity, parseQuantity } from "../../../src/ui/quantity/parseQuantity.ts";
import type { ParsedQuantity, QuantityContext, QuantityKind } from "../../../src/ui/quantity/QuantityKind.ts";
import { quantityTraits } from "../../../src/ui/quantity/quantityTraits.ts";

const metric: QuantityContext = { units: "metric", wavelength_m: 42 };
const imperial: QuantityContext = { units: "imperial", wavelength_m: 42 };
const kinds = Object.keys(quantityTraits) as QuantityKind[];

function value(text: string, kind: QuantityKind, context = metric): number {
  const parsed = parseQuantity(text, kind, context);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
  return parsed.value;
}

function refusal(text: string, kind: QuantityKind, context = metric): string {
  const parsed = parseQuantity(text, kind, context);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.value}`);
  return parsed.message;
}

/** One unit of the twelfth digit, to which the reader rounds. */
const asWritten = (expected: number) => ({
  asymmetricMatch: (got: number) => Math.abs(got - expected) <= 1e-11 * Math.abs(expected),
});

describe("lengths", () => {
  test.each([
    ["33 ft 6 in", 33.5 * 0.3048],
    [`33'6"`, 33.5 * 0.3048],
    ["33′ 6″", 33.5 * 0.3048],
    ["33’6”", 33.5 * 0.3048],
    ["33' 6", 33.5 * 0.3048],
    ["33 ft 6 1/2 in", (33 * 12 + 6.5) * 0.0254],
    ["33′6½″", (33 * 12 + 6.5) * 0.0254],
    ["6 3/8 in", 6.375 * 0.0254],
    ["10.2 m", 10.2],
    ["10,2 m", 10.2],
    ["10.2m", 10.2],
    ["  10.2  M ", 10.2],
    ["10.2", 10.2],
    [",5", 0.5],
    ["1020 cm", 10.2],
    ["10 m 20 cm", 10.2],
    ["10 m + 20 cm", 10.2],
    ["10 m − 1 ft", 10 - 0.3048],
    ["0.21 wl", 8.82],
    ["0.21 λ", 8.82],
    ["0.21λ", 8.82],
    ["1/4 wl", 10.5],
    ["234/7.1 ft", (234 / 7.1) * 0.3048],
    ["300/7.1/4", 300 / 7.1 / 4],
    ["300 ÷ 7.5 × 0.25 m", 10],
    ["2*(3+2) m", 10],
    ["10 m / 2", 5],
    ["2^3 m", 8],
    ["-5 m", -5],
    ["−1 ft 6 in", -18 * 0.0254],
    ["10 ft - 1 ft 6 in", 8.5 * 0.3048],
    ["-2^2 m", -4],
    ["1e1 m", 10],
    ["1 yd", 0.9144],
  ])("%s", (text, expected) => {
    expect(value(text, "length_m")).toEqual(asWritten(expected));
  });

  test("a bare number is metres or feet, as the page is set", () => {
    expect(value("10", "length_m", metric)).toBe(10);
    expect(value("10", "length_m", imperial)).toEqual(asWritten(3.048));
  });

  test("decimals come back as they were typed, through any conversion", () => {
    for (let n = 1; n < 20_000; n += 37) {
      expect(value(`${n / 1000} m`, "length_m")).toBe(n / 1000);
      expect(value(`${n / 10} cm`, "length_m")).toBe(n / 1000);
      expect(value(`${n} kHz`, "frequency_MHz")).toBe(n / 1000);
      expect(value(`${n / 1000} mS/m`, "conductivity_SPerM")).toBe(n / 1_000_000);
    }
    for (let degrees = 0; degrees < 360; degrees++) expect(value(`${degrees}`, "angle_deg")).toBe(degrees);
  });

  test("a percentage is over the named length, and means nothing without one", () => {
    const context = { ...metric, percentOver: { value: 10, name: "driven" } };
    expect(value("+5 %", "length_m", context)).toEqual(asWritten(10.5));
    expect(value("-2,5%", "length_m", context)).toEqual(asWritten(9.75));
    expect(refusal("5 %", "length_m")).toMatch(/percentage/i);
  });

  test("wavelengths are refused where there is no frequency", () => {
    expect(refusal("0.2 wl", "length_m", { units: "metric" })).toMatch(/wavelength/);
  });
});

describe("other kinds", () => {
  test.each<[string, QuantityKind, number]>([
    ["1.6 mm", "diameter_mm", 1.6],
    ["1.6", "diameter_mm", 1.6],
    ["1/2 in", "diameter_mm", 12.7],
    // ASTM B258: 14 AWG is 1.628 mm, 4/0 is 11.684 mm (from memory, to the places given).
    ["14 AWG", "diameter_mm", 1.62772663379],
    ["#14", "diameter_mm", 1.62772663379],
    ["awg 14", "diameter_mm", 1.62772663379],
    ["4/0 AWG", "diameter_mm", 11.684],
    ["7.1 MHz", "frequency_MHz", 7.1],
    ["7100 kHz", "frequency_MHz", 7.1],
    ["7,1", "frequency_MHz", 7.1],
    ["7.1 mhz", "frequency_MHz", 7.1],
    ["5 mS/m", "conductivity_SPerM", 0.005],
    ["5", "conductivity_SPerM", 0.005],
    ["0.005 S/m", "conductivity_SPerM", 0.005],
    ["62", "angle_deg", 62],
    ["62°", "angle_deg", 62],
    ["62 deg", "bearing_deg", 62],
    ["-30", "bearing_deg", 330],
    ["360", "bearing_deg", 0],
    ["725", "bearing_deg", 5],
    ["12.5 Ω", "resistance_ohm", 12.5],
    ["-30", "resistance_ohm", -30],
    ["1.5 kW", "power_W", 1500],
    ["180 mi", "distance_km", 180 * 1.609344],
    ["16", "count", 16],
    ["2*8", "count", 16],
    ["13", "ratio", 13],
  ])("%s as %s", (text, kind, expected) => {
    expect(value(text, kind)).toEqual(asWritten(expected));
  });

  test("where inches are used a lone whole number is a gauge, anything else inches", () => {
    expect(value("14", "diameter_mm", imperial)).toEqual(asWritten(1.62772663379));
    expect(value("0.5", "diameter_mm", imperial)).toEqual(asWritten(12.7));
  });

  test.each(["40 AWG", "4/0 AWG"])("%s is the end of the gauges", (text) => {
    expect(value(text, "diameter_mm")).toBeGreaterThan(0);
  });

  test.each(["41 AWG", "5/0 AWG", "14.5 AWG"])("%s is no gauge", (text) => {
    expect(refusal(text, "diameter_mm")).toMatch(/no wire gauge.*4\/0 to 40/);
  });
});

describe("what cannot be read is refused with a reason", () => {
  test.each<[string, QuantityKind, RegExp]>([
    ["", "length_m", /^Nothing is written/],
    ["   ", "length_m", /^Nothing is written/],
    ["NaN", "length_m", /“NaN” is not a unit/],
    ["Infinity m", "length_m", /not a unit/],
    ["1e999", "length_m", /1e999 is too large/],
    ["1/0", "length_m", /does not come to a number/],
    ["10 kg", "length_m", /“kg” is not a unit.*10\.2 m/],
    ["10 MHz", "length_m", /“10 MHz” is not a length/],
    ["10 m + 3", "length_m", /is not a length/],
    ["5 m * 2 m", "length_m", /is not a length/],
    ["10 20", "length_m", /side by side/],
    ["(2", "length_m", /bracket/],
    ["2)", "length_m", /what stands after “2”/],
    ["m", "length_m", /number is missing/],
    ["5 +", "length_m", /number is missing after “5 \+”/],
    ["1,020.5 cm", "length_m", /only one decimal sign/],
    ["1.2.3", "length_m", /only one decimal sign/],
    ["∞ m", "length_m", /“∞” has no meaning/],
    ["10 ≈ m", "length_m", /“≈” has no meaning/],
    ["16.5", "count", /16\.5 is not a whole number/],
    ["16 m", "count", /No unit belongs here/],
    ["constructor", "length_m", /not a unit/],
    ["5 __proto__", "length_m", /no meaning/],
    ["5 toString", "length_m", /not a unit/],
    ["import(x)", "length_m", /not a unit/],
  ])("%j as %s", (text, kind, message) => {
    expect(refusal(text, kind)).toMatch(message);
  });

  test("a pasted page is refused by its length and quoted by its first words", () => {
    const message = refusal("10 m ".repeat(2000), "length_m");
    expect(message).toMatch(/10000 characters.*120 at most/);
    expect(message.length).toBeLessThan(150);
  });

  test("the longest text allowed is read, one more character is not", () => {
    const text = `${"(".repeat(59)}1${")".repeat(60 - 1)}`;
    expect(value(text.padEnd(longestQuantity), "ratio")).toBe(1);
    expect(refusal(text.padEnd(longestQuantity + 1), "ratio")).toMatch(/121 characters/);
  });
});

const isAnswer = (parsed: ParsedQuantity) =>
  parsed.ok ? Number.isFinite(parsed.value) : /\S.*\.$/su.test(parsed.message);

describe("whatever is typed", () => {
  const alphabet = [
    ...Array.from("0123456789.,+-*/^()%'\"′″½ "),
    "ft",
    "in",
    "m",
    "mm",
    "AWG",
    "wl",
    "λ",
    "MHz",
    "S",
    "e",
    "°",
    "#",
  ];
  const nearlyRight = fc.array(fc.constantFrom(...alphabet), { maxLength: 24 }).map((parts) => parts.join(""));
  const anything = fc.oneof(
    nearlyRight,
    fc.string({ unit: "binary", maxLength: 10_000 }),
    fc.string({ maxLength: 40 }),
  );

  test("the answer is a finite number or a message; it never throws", () => {
    fc.assert(
      fc.property(anything, fc.constantFrom(...kinds), fc.constantFrom(metric, imperial), (text, kind, context) => {
        const parsed = parseQuantity(text, kind, context);
        expect(parsed).toSatisfy(isAnswer);
      }),
      { numRuns: 3000, seed: 71 },
    );
  });
});
