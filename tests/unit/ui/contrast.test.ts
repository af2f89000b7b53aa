import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

/** Contrast as WCAG 2.2 defines it (relative luminance of sRGB, section "contrast ratio"). */
const css = readFileSync(new URL("../../../src/ui/tokens.css", import.meta.url), "utf8");

function coloursOf(block: string): Record<string, string> {
  return Object.fromEntries(
    [...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, hex]) => [name!, hex!]),
  );
}

function themeOf(selector: string): Record<string, string> {
  const start = css.indexOf(`${selector} {`);
  return coloursOf(css.slice(start, css.indexOf("\n}", start)));
}

function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

const light = themeOf(":root");
const themes = [
  { name: "light", colours: light, text: 4.5, line: 3 },
  { name: "dark", colours: { ...light, ...themeOf(':root[data-theme="dark"]') }, text: 4.5, line: 3 },
  { name: "projector", colours: { ...light, ...themeOf(':root[data-theme="projector"]') }, text: 7, line: 4.5 },
];

describe.each(themes)("the $name theme", ({ colours, text, line }) => {
  const of = (name: string) => colours[name]!;

  test.each(["paper", "sheet", "grass", "path"])("ink can be read on %s", (ground) => {
    expect(contrast(of("ink"), of(ground))).toBeGreaterThanOrEqual(text);
  });

  test.each(["paper", "sheet"])("every text colour can be read on %s", (ground) => {
    for (const name of ["soft", "live", "pin", "warn"]) {
      expect(contrast(of(name), of(ground)), `${name} on ${ground}`).toBeGreaterThanOrEqual(text);
    }
  });

  test("text on wheat, on live and on ink can be read", () => {
    expect(contrast(of("path-ink"), of("path"))).toBeGreaterThanOrEqual(text);
    expect(contrast(of("on-live"), of("live"))).toBeGreaterThanOrEqual(text);
    expect(contrast(of("on-ink"), of("ink"))).toBeGreaterThanOrEqual(text);
  });

  test.each(["sheet", "path", "grass"])("the lines that carry meaning stand out on %s", (ground) => {
    for (const name of ["live", "pin"]) {
      expect(contrast(of(name), of(ground)), `${name} on ${ground}`).toBeGreaterThanOrEqual(line);
    }
  });

  test.each(["paper", "sheet"])("control borders and the focus ring stand out on %s", (ground) => {
    expect(contrast(of("rule-strong"), of(ground)), "rule-strong").toBeGreaterThanOrEqual(3);
    expect(contrast(of("focus"), of(ground)), "focus").toBeGreaterThanOrEqual(line);
  });
});

test("black on white is 21, as the definition says, and a pale grey would be caught", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
  expect(contrast("#b0b0b0", "#ffffff")).toBeLessThan(3);
});
