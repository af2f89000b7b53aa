import { expect, test } from "vitest";
import { frameShortage } from "../../../src/store/frameShortage.ts";

const hz = 1000 / 60;

/** Frames at 60 Hz, of which some do not come; what was said at each that came. */
function said(watch: ReturnType<typeof frameShortage>, frames: number, isMissing: (i: number) => boolean, from = 0) {
  const all: boolean[] = [];
  for (let i = from; i < from + frames; i++) if (!isMissing(i)) all.push(watch.frame(i * hz));
  return all;
}

test("frames that come are no shortage, on faster screens neither", () => {
  expect(said(frameShortage(), 600, () => false)).not.toContain(true);
  const watch = frameShortage();
  for (let i = 0; i < 600; i++) expect(watch.frame((i * 1000) / 144)).toBe(false);
});

test("one frame in a second may be missing", () => {
  expect(said(frameShortage(), 600, (i) => i % 60 === 30)).not.toContain(true);
});

test("several in a second are a shortage, which ends when they come again", () => {
  const watch = frameShortage();
  const short = said(watch, 120, (i) => i % 12 === 5);
  expect(short.indexOf(true)).toBeGreaterThan(5);
  expect(short.indexOf(true)).toBeLessThan(40);
  expect(short.slice(40)).not.toContain(false);
  const after = said(watch, 120, () => false, 120);
  expect(after[0]).toBe(true);
  expect(after.at(-1)).toBe(false);
  expect(after.lastIndexOf(true)).toBeLessThan(70);
});

test("the time between two drags is no frame that is missing", () => {
  const watch = frameShortage();
  for (let drag = 0; drag < 20; drag++) {
    expect(said(watch, 20, () => false, drag * 200)).not.toContain(true);
    watch.pause();
  }
});
