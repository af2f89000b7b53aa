import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, extname, join, posix, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const top = join(dirname(fileURLToPath(import.meta.url)), "../..");

interface SourceText {
  /** From the top of the project, with "/". */
  readonly file: string;
  readonly text: string;
}

const made = new Set(["node_modules", "dist", ".git", ".shots"]);
const readable = new Set([".ts", ".tsx", ".css", ".html", ".json", ".md", ".svg", ".csv", ".txt", ""]);

function readTexts(folder: string): SourceText[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (made.has(entry.name)) return [];
    if (entry.isDirectory()) return readTexts(path);
    if (!readable.has(extname(entry.name)) || statSync(path).size > 5e6) return [];
    return [{ file: relative(top, path).replaceAll("\\", "/"), text: readFileSync(path, "utf8") }];
  });
}

/** What a module asks for: static and dynamic imports, re-exports, bare imports, workers by address; a text "from" is none. */
function importsOf({ text }: SourceText): string[] {
  const asks = /(?:(?<!["'`])\bfrom\s*|\bimport\s*\(?\s*|\brequire\s*\(\s*|\bnew URL\(\s*)["'`]([^"'`]+)["'`]/g;
  const code = text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(?<=^|\s)\/\/.*$/gm, "");
  return [...code.matchAll(asks)].map(([, from]) => from!.replace(/\?.*$/, ""));
}

const target = (file: string, from: string) => posix.normalize(posix.join(posix.dirname(file), from));

/** The engine stands alone: no package, no file from outside its folder. */
function leavesEngine(source: SourceText): string[] {
  return importsOf(source)
    .filter((from) => !from.startsWith(".") || !target(source.file, from).startsWith("engine/"))
    .map((from) => `${source.file} asks for ${from}`);
}

/** A calculation gives the same answer whenever and wherever it runs. */
function looksAtTheClock(source: SourceText): string[] {
  const asks = /\bnew Date\b|\bDate\.now\b|\bMath\.random\b|\bperformance\.now\b|\bglobalThis\b/g;
  return [...source.text.matchAll(asks)].map(([what]) => `${source.file} asks for ${what}`);
}

/** The page goes into the engine by its front door, and never into the tests. */
function entersBySideDoor(source: SourceText): string[] {
  return importsOf(source)
    .filter((from) => from.startsWith("."))
    .filter((from) => /^(?:engine|tests)\//.test(target(source.file, from)))
    .filter((from) => target(source.file, from) !== "engine/index.ts")
    .map((from) => `${source.file} asks for ${from}`);
}

const mayStandAtTop = new Set(
  (
    "README.md DEVELOPERS.md LICENSE index.html vite.config.ts tsconfig.json " +
    "package.json package-lock.json src engine tests demo-data public"
  ).split(" "),
);

function strangersAtTop(names: readonly string[]): string[] {
  return names.filter((name) => !name.startsWith(".") && !made.has(name) && !mayStandAtTop.has(name));
}

/** The project speaks of itself only: no place on somebody's disk, no tool or paper of somebody's desk. */
function speaksOfElsewhere({ file, text }: SourceText): string[] {
  const words = [
    /(?<![\w.@])\/(?:work|home|Users|root|tmp|var|opt)\/[\w.-]+/g,
    /\b[A-Z]:\\\w+/g,
    /\bregistry\.[\w-]+\.\w+/g,
  ];
  return words.flatMap((word) => [...text.matchAll(word)].map(([found]) => `${file} says ${found}`));
}

const texts = readTexts(top);
const under = (folder: string) => texts.filter(({ file }) => file.startsWith(`${folder}/`) && /\.tsx?$/.test(file));

test("there is something to look at", () => {
  expect(under("engine").flatMap(importsOf).length).toBeGreaterThan(20);
  expect(under("src").flatMap(importsOf).length).toBeGreaterThan(20);
  expect(texts.map(({ file }) => file)).toEqual(expect.arrayContaining([".ci/run", "index.html", "DEVELOPERS.md"]));
});

test("engine/ imports only engine/", () => {
  expect(under("engine").flatMap(leavesEngine)).toEqual([]);
});

test("engine/ looks at no clock and throws no dice", () => {
  expect(under("engine").flatMap(looksAtTheClock)).toEqual([]);
});

test("src/ enters the engine by engine/index.ts only", () => {
  expect(under("src").flatMap(entersBySideDoor)).toEqual([]);
});

test("the top level holds what it should and nothing else", () => {
  expect(strangersAtTop(readdirSync(top))).toEqual([]);
});

test("nothing speaks of places and papers outside the project", () => {
  expect(texts.flatMap(speaksOfElsewhere)).toEqual([]);
});

test("each rule can fail", () => {
  const inEngine = (text: string) => ({ file: "engine/a/b.ts", text });
  expect(leavesEngine(inEngine('import { useState } from "react";'))).toHaveLength(1);
  expect(leavesEngine(inEngine('export * from "../../src/store/plan.ts";'))).toHaveLength(1);
  expect(leavesEngine(inEngine('await import("node:fs");'))).toHaveLength(1);
  expect(leavesEngine(inEngine('import { c } from "../constants.ts";'))).toEqual([]);
  expect(leavesEngine(inEngine('check("from", "The lower edge");'))).toEqual([]);
  expect(looksAtTheClock(inEngine("const t = Date.now();"))).toHaveLength(1);

  const inView = (text: string) => ({ file: "src/worker/w.ts", text });
  expect(entersBySideDoor(inView('import { x } from "../../engine/linalg/x.ts";'))).toHaveLength(1);
  expect(entersBySideDoor(inView('import W from "../../engine/w.ts?worker&inline";'))).toHaveLength(1);
  expect(entersBySideDoor(inView('import type { Plan } from "../../engine/index.ts";'))).toEqual([]);

  expect(strangersAtTop(["src", "notes.md", ".ci"])).toEqual(["notes.md"]);
  // Put together here, so that this file passes its own rule.
  const strange = [
    ["", "home", "me", "a.ts"].join("/"),
    ["C:", "me"].join("\\"),
    ["registry", "name", "org"].join("."),
  ];
  for (const text of strange) expect(speaksOfElsewhere({ file: "a.md", text })).toHaveLength(1);
});
