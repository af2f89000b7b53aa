import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Folder of the package a module is part of: ".../node_modules/name" or ".../node_modules/@scope/name". */
const packageFolder = /^(.*\/node_modules\/(?:@[^/]+\/)?[^/\0]+)\//;

function noticeOf(folder: string): string {
  const manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as {
    name: string;
    version: string;
    license?: string;
  };
  const files = readdirSync(folder).filter((file) => /^(?:licen[cs]e|copying|notice)\b/i.test(file));
  const texts = files.map((file) => readFileSync(join(folder, file), "utf8").trim());
  return [`${manifest.name} ${manifest.version}, ${manifest.license ?? "see below"}`, ...texts].join("\n\n");
}

/**
 * The names, versions and licences of all packages that a page is made from, as one text: their licences ask to be
 * passed on with every copy, and the page is one file.
 *
 * @param modules paths of the bundled modules
 * @param named   packages shipped without a module of their own, such as fonts
 */
export function shippedLicences(modules: Iterable<string>, named: readonly string[]): string {
  const folders = new Set(named.map((name) => join(process.cwd(), "node_modules", name)));
  for (const path of modules) {
    const [, folder] = packageFolder.exec(path.replaceAll("\\", "/").replace(/^\0/, "")) ?? [];
    if (folder) folders.add(folder);
  }
  return [...folders]
    .toSorted()
    .map(noticeOf)
    .join(`\n\n${"-".repeat(60)}\n\n`);
}
