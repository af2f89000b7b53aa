import { expect, test } from "vitest";
import { csvText } from "../../../src/rooms/trials/save/csvText.ts";

test("a table for a spreadsheet: what it is, heads, rows; numbers in full, nothing for what is none", () => {
  const text = csvText(
    ["walk: my plan", "gain\nin dBi"],
    ["spacing [m]", "note"],
    [
      [1 / 3, "plain"],
      [Number.NaN, 'with "quotes", and a comma'],
      [null, "=1+1"],
      [-2.5, "-2.5 as text"],
    ],
  );
  expect(text.split("\r\n")).toEqual([
    "# walk: my plan",
    "# gain in dBi",
    "spacing [m],note",
    "0.333333333,plain",
    ',"with ""quotes"", and a comma"',
    ",'=1+1",
    "-2.5,'-2.5 as text",
    "",
  ]);
});
