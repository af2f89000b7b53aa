import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LogEntry } from "../../../engine/index.ts";
import { readLogCsv, writeLogCsv } from "../../../src/rooms/bench/log/logCsv.ts";
import { readCsv } from "../../../src/rooms/bench/log/readCsv.ts";
import { seasons } from "../../../src/rooms/bench/log/seasons.ts";
import { okValue } from "../../support/okValue.ts";

const said = (text: string) => {
  const read = readLogCsv(text, []);
  return read.ok ? [] : read.problems.map((one) => one.message);
};
const heads =
  "date,time,ground,who,fed,other bases,frequency [MHz],R [ohm],X [ohm],SWR [to 50 ohm],X = 0 at [MHz],what was done,remark";

/** Words as the fields leave them: trimmed, one line or several, with all that a table file has to guard. */
const words = fc
  .string({
    minLength: 1,
    maxLength: 40,
    unit: fc.constantFrom("a", "Ω", " ", ",", '"', "\n", "\r\n", ";", "é", "=", "7"),
  })
  .map((text) => text.trim())
  .filter((text) => text !== "");
const figure = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).filter((v) => !Object.is(v, -0));
const entry: fc.Arbitrary<LogEntry> = fc.record(
  {
    id: fc.constant("x"),
    date: fc
      .date({ min: new Date("1990-01-01T00:00:00Z"), max: new Date("2090-12-31T00:00:00Z"), noInvalidDate: true })
      .map((day) => day.toISOString().slice(0, 10)),
    ground: fc.constantFrom("dry", "moist", "wet", "frozen", "snow"),
    others: fc.constantFrom("open", "joined", "loaded", "fed", "none"),
    fed: words,
    time: fc.constantFrom("07:05", "23:59"),
    who: words,
    frequency_MHz: figure(1, 60),
    resistance_ohm: figure(0, 1e5),
    reactance_ohm: figure(-1e5, 1e5),
    swr: figure(1, 900),
    resonance_MHz: figure(1, 60),
    action: words,
    remark: words,
  },
  { requiredKeys: ["id", "date", "ground", "others", "fed"] },
);

describe("the log as CSV", () => {
  test("what is written is read back, entry by entry, figure by figure", () => {
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 12 }), (log) => {
        const back = okValue(readLogCsv(writeLogCsv(log), []));
        expect(back.map((one) => ({ ...one, id: "x" }))).toEqual(log);
        expect(new Set(back.map((one) => one.id)).size).toBe(log.length);
      }),
      { seed: 20260531, numRuns: 300 },
    );
  });
  test("LF, a byte-order mark, columns in another order and ones it does not know are taken", () => {
    const text =
      "\uFEFFfed,moon,ground,date,other bases,R [ohm]\ndriven,full,wet,2026-03-01,open,41.5\n\ndriven,,dry,2026-07-01,open,\n";
    const log = okValue(readLogCsv(text, [{ id: "entry-1" } as LogEntry]));
    expect(log).toEqual([
      { id: "entry-2", date: "2026-03-01", ground: "wet", others: "open", fed: "driven", resistance_ohm: 41.5 },
      { id: "entry-3", date: "2026-07-01", ground: "dry", others: "open", fed: "driven" },
    ]);
  });
  test("every bad line is named with its number, all at once, and nothing is taken", () => {
    const problems = said(
      [
        heads,
        "2026-02-30,,wet,,driven,open,,,,,,,",
        "2026-02-03,,soggy,,driven,open,7.1,41,,,,,",
        '2026-02-03,,wet,,driven,open,7.1,"41,5",,,,,',
        "2026-02-03,,wet,,driven",
        "2026-02-03,,wet,,,open,7.1,41,,0.5,,,",
      ].join("\r\n"),
    );
    expect(problems.map((one) => one.match(/^Line (\d+)/)?.[1])).toEqual(["2", "3", "4", "5", "6", "6"]);
    expect(problems[0]).toContain("no 2026-02-30");
    expect(problems[1]).toContain("must be one of dry, moist, wet, frozen, snow");
    expect(problems[2]).toContain('"41,5"; it must be a number');
    expect(problems[3]).toContain("5 fields stand here under 13 heads");
    expect(problems[4]).toMatch(/SWR.*from 1 to/);
  });
  test.each([
    ["", /empty/],
    ["date,ground,fed\n", /no column "other bases"/],
    [`${heads},date\n`, /"date" stands there twice/],
    [`${heads}\n"2026-01-01`, /Line 2: a quotation mark is opened here/],
    [`${heads}\n2026-01-01,a"b`, /Line 2: a quotation mark stands in the midst/],
  ])("%j is refused", (text, says) => expect(said(text).join()).toMatch(says));
  test("lines are counted through fields that run over several", () => {
    const rows = okValue(readCsv('a,"b\r\nc\nd"\r\ne,f\n'));
    expect(rows).toEqual([
      { line: 1, cells: ["a", "b\r\nc\nd"] },
      { line: 4, cells: ["e", "f"] },
    ]);
  });
  test("broken files never crash: ten thousand of them, each refused or read", () => {
    let seed = 7;
    const random = (below: number) => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return Math.floor((seed / 2 ** 32) * below);
    };
    const good = `${heads}\r\n2026-02-03,07:05,wet,me,driven,open,7.1,41.5,-3,1.4,7.08,"cut, 20 mm",\r\n`;
    const bits = ['"', ",", "\r\n", "\n", "x", "9e999", "-", " ", "\u0000", "NaN"];
    for (let n = 0; n < 10_000; n++) {
      const at = random(good.length);
      const text = good.slice(0, at) + bits[random(bits.length)] + good.slice(at + random(4));
      const read = readLogCsv(text, []);
      if (read.ok) expect(read.value.length).toBeLessThanOrEqual(2);
      else for (const one of read.problems) expect(one.message).toMatch(/^Line \d+: /);
    }
  });
});

describe("seasons", () => {
  const at = (ground: LogEntry["ground"], resonance_MHz?: number, resistance_ohm?: number, fed = "driven") =>
    ({
      id: "x",
      date: "2026-01-01",
      ground,
      fed,
      others: "open",
      ...(resonance_MHz === undefined ? {} : { resonance_MHz }),
      ...(resistance_ohm === undefined ? {} : { resistance_ohm }),
    }) as LogEntry;
  test("middle values by ground, and the drift from the driest, by hand", () => {
    const [group] = seasons([
      at("wet", 7.08, 44),
      at("dry", 7.12, 40),
      at("dry", 7.1, 42),
      at("dry", 7.11, 38),
      at("frozen", 7.13),
    ]);
    expect(group!.rows.map((row) => [row.ground, row.entries])).toEqual([
      ["dry", 3],
      ["wet", 1],
      ["frozen", 1],
    ]);
    expect(group!.rows[0]).toMatchObject({ shift_kHz: null, resonance_MHz: { value: 7.11, least: 7.1, most: 7.12 } });
    expect(group!.rows[1]!.shift_kHz).toBeCloseTo(-30, 9);
    expect(group!.rows[1]!.shift_ohm).toBeCloseTo(4, 9);
    expect(group!.rows[2]).toMatchObject({ resistance_ohm: null, shift_ohm: null });
  });
  test("one ground alone, or different elements, are held against nothing", () => {
    expect(seasons([at("dry", 7.1), at("dry", 7.2)])).toEqual([]);
    expect(seasons([at("dry", 7.1), at("wet", 7.2, 40, "reflector")])).toEqual([]);
  });
});
