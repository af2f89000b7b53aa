import { describe, expect, test } from "vitest";
import { readPlanFile, type SavedPlan, writePlanFile } from "../../../engine/index.ts";
import { parseJsonText } from "../../../engine/plan/parseJsonText.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";

const saved: SavedPlan = {
  ...twoElements,
  title: 'Ünïcode "π" 🏝 \\ \u2028',
  site: { heading_deg: 62, ituRegion: 1 },
  pins: [{ id: "pin-1", name: "One", plan: { ...twoElements, elements: twoElements.elements.slice(0, 1) } }],
  baseline: "pin-1",
};
const text = writePlanFile(saved);
const problem = (candidate: string) => {
  const result = readPlanFile(candidate);
  if (result.ok) throw new Error("was read");
  return result.problems[0]!;
};

describe("writePlanFile", () => {
  test("ends with one newline and starts with what the file is", () => {
    expect(text.endsWith("}\n")).toBe(true);
    expect(text.split("\n").slice(0, 4)).toEqual([
      "{",
      '  "format": "hindwire-plan",',
      '  "version": 1,',
      `  "title": ${JSON.stringify(saved.title)},`,
    ]);
  });
  test("the same plan gives the same text, however its fields were put in", () => {
    const reversed = JSON.parse(text, (_, value: unknown) =>
      typeof value === "object" && value !== null && !Array.isArray(value)
        ? Object.fromEntries(Object.entries(value).reverse())
        : value,
    ) as SavedPlan;
    expect(Object.keys(reversed)).not.toEqual(Object.keys(JSON.parse(text) as object));
    expect(writePlanFile(reversed)).toBe(text);
  });
});

describe("readPlanFile", () => {
  test("gives back what was written", () => {
    expect(readPlanFile(text)).toEqual({ ok: true, value: saved });
  });
  test("fields unknown here survive reading and writing", () => {
    const more = { ...saved, log: [{ note: "cut 3 cm", "odd key": null }] };
    const again = readPlanFile(writePlanFile(more));
    expect(again).toEqual({ ok: true, value: more });
    expect(again.ok && writePlanFile(again.value)).toBe(writePlanFile(more));
  });
  test("byte order mark and Windows or old Macintosh line ends", () => {
    for (const variant of [`\uFEFF${text}`, text.replaceAll("\n", "\r\n"), text.replaceAll("\n", "\r")])
      expect(readPlanFile(variant)).toEqual({ ok: true, value: saved });
  });
  test("cut in half: where it breaks off", () => {
    const half = text.slice(0, text.indexOf('"height_m"') + 4);
    const lines = half.split("\n");
    const { code, where, message } = problem(half);
    expect(code).toBe("text-cut-off");
    expect(where).toBe(`line ${lines.length}, column ${lines.at(-1)!.length + 1}`);
    expect(message).toContain("cut off");
    expect(problem(half.replaceAll("\n", "\r\n")).where).toBe(where);
    expect(problem(half.replaceAll("\n", "\r")).where).toBe(where);
  });
  test("wherever a file is cut off, that is what it says, and where", () => {
    const all = writePlanFile({ ...saved, frequency_MHz: 7.125e-7, odd: [true, false, null, "\u001f"] } as SavedPlan);
    for (let end = 1; end < all.trimEnd().length; end++) {
      const lines = all.slice(0, end).split("\n");
      const { code, where } = problem(all.slice(0, end));
      expect(`${end}: ${code} at ${where}`).toBe(
        `${end}: text-cut-off at line ${lines.length}, column ${lines.at(-1)!.length + 1}`,
      );
    }
  });
  test("a comma lost in the middle", () => {
    const broken = text.replace('"version": 1,', '"version": 1');
    expect(problem(broken)).toMatchObject({ code: "not-json", where: "line 4, column 3" });
    expect(problem(broken).message).toBe(
      'The file is damaged. At line 4, column 3, there is "\\"" where "," or "}" should come. Nothing of it was used.',
    );
  });
  test("another program's file, a newer version, a wrong field, plain text, nothing", () => {
    expect(problem('{"type":"FeatureCollection","features":[]}')).toMatchObject({ code: "unknown-format" });
    expect(problem("[1,2]")).toMatchObject({ code: "unknown-format" });
    expect(problem(text.replace('"version": 1', '"version": 12')).message).toMatch(/version 12.*version 1\b/);
    expect(problem(text.replace('"version": 1', '"version": 12')).code).toBe("newer-version");
    expect(problem(text.replace("10.25", '"10.25"'))).toMatchObject({
      code: "wrong-type",
      where: "elements[0].height_m",
    });
    expect(problem("Dear club,\nhere is my plan")).toMatchObject({ code: "not-json", where: "line 1, column 1" });
    expect(problem("Dear club,\nhere is my plan").message).toContain('"Dear club');
    for (const blank of ["", "\uFEFF", " \r\n\t"]) expect(problem(blank).code).toBe("empty-file");
  });
  test("over ten million characters is refused unread", () => {
    // Were it read, the problem would be that it is no JSON.
    expect(problem("x".repeat(10_000_001)).code).toBe("too-large");
    expect(problem("x".repeat(10_000_000)).code).toBe("not-json");
  });
  test("a name used twice would lose one of its values", () => {
    expect(problem(text.replace('"version": 1,', '"version": 1,\n  "title": "other",'))).toMatchObject({
      code: "duplicate-name",
      where: "line 5, column 3",
    });
  });
  test("brackets without end do not exhaust the stack", () => {
    expect(problem(`{"a":${"[".repeat(1e6)}`).code).toBe("too-deep");
  });
  test("a number too large for a number is named, not lost", () => {
    expect(problem(text.replace("10.25", "1e999"))).toMatchObject({
      code: "not-finite",
      where: "elements[0].height_m",
    });
  });
});

describe("parseJsonText on the grammar's corners", () => {
  test.each([
    "0",
    "-0",
    "1.5e-3",
    "-12E+2",
    '"\\u00e9\\n\\/\\"\\\\\\b\\f\\r\\t"',
    '"\\ud83c"',
    "[]",
    "{}",
    "[[],{}]",
    " true ",
    "null",
  ])("%s", (json) => {
    expect(parseJsonText(json)).toEqual({ ok: true, value: JSON.parse(json) });
  });
  test.each([
    "",
    "01",
    "1.",
    ".5",
    "+1",
    "1e",
    "tru",
    "nul",
    "[1,]",
    "{,}",
    '{"a"}',
    "{'a':1}",
    '"\t"',
    '"\\x"',
    '"\\u12g4"',
    "1 2",
    "[1 2]",
    "NaN",
    "undefined",
    "/* */1",
  ])("%s is refused, as the language does", (json) => {
    expect(() => JSON.parse(json)).toThrow(SyntaxError);
    expect(parseJsonText(json).ok).toBe(false);
  });
});
