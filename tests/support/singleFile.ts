import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import type { Plugin } from "vite";
import { shippedLicences } from "./shippedLicences.ts";

/** What the built page may do: run its own script, show itself, start its own workers. Nothing may reach a network. */
function policy(scriptHashes: readonly string[]): string {
  return [
    "default-src 'none'",
    `script-src ${scriptHashes.join(" ")}`,
    // A page saved from the browser carries style="…" attributes, which no hash can cover.
    "style-src 'unsafe-inline'",
    "img-src data: blob:",
    "font-src data:",
    "worker-src blob:",
    "connect-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/** Replaces the one place where `pattern` stands, and throws when it does not stand exactly once. */
function replaceOnce(text: string, pattern: RegExp, replacement: string, what: string): string {
  const found = text.match(new RegExp(pattern, "gi"))?.length ?? 0;
  if (found !== 1) throw new Error(`single file: ${what} stands ${found} times in the page, must be once`);
  // A function, because "$&" inside bundled code must stay as it is.
  return text.replace(new RegExp(pattern, "i"), () => replacement);
}

const literal = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/**
 * Folds what a build wrote into its one page and returns that page, with the policy that shuts the network off.
 *
 * @param page    the built index.html, which refers to its files as "./name"
 * @param scripts file name -> code
 * @param styles  file name -> style sheet
 * @throws Error when a file is not referred to exactly once, or the page has no charset line to put the policy after
 */
export function foldPage(
  page: string,
  scripts: ReadonlyMap<string, string>,
  styles: ReadonlyMap<string, string>,
): string {
  let folded = page;
  for (const [file, sheet] of styles) {
    const safe = sheet.replace(/<\/(style)/gi, "<\\/$1");
    folded = replaceOnce(folded, new RegExp(`<link[^>]*href="\\./${literal(file)}"[^>]*>`), "", file);
    folded = replaceOnce(folded, /<\/head>/, `<style>${safe}</style></head>`, "</head>");
  }
  for (const [file, code] of scripts) {
    // Inside a script element the parser looks for these two and nothing else.
    const safe = code.replace(/<\/(script)/gi, "<\\/$1").replace(/<!--/g, "<\\!--");
    folded = replaceOnce(folded, new RegExp(`<script[^>]*src="\\./${literal(file)}"[^>]*></script>`), "", file);
    folded = replaceOnce(
      folded,
      /<\/body>(?=\s*<\/html>\s*$)/,
      `<script type="module">${safe}</script></body>`,
      "</body>",
    );
  }
  const hashes = [...folded.matchAll(/<script(?:\s[^>]*)?>([\s\S]*?)<\/script>/gi)].map(
    ([, code]) => `'sha256-${createHash("sha256").update(code!).digest("base64")}'`,
  );
  const charset = '<meta charset="utf-8" />';
  const rule = `<meta http-equiv="Content-Security-Policy" content="${policy(hashes)}" />`;
  return replaceOnce(folded, new RegExp(literal(charset)), charset + rule, charset);
}

/**
 * Builds one index.html that holds everything and opens from a disk. A module worker fails without a word on a page
 * opened from a disk, so workers are classic scripts. Any other output file fails the build.
 * Builds only: the development server needs its socket, and a build for Node (`--ssr`) has no page.
 */
export function singleFile(): Plugin {
  return {
    name: "single-file",
    enforce: "post",
    apply: (config, { command }) => command === "build" && !config.build?.ssr,
    config: () => ({
      base: "./",
      worker: { format: "iife" },
      build: {
        assetsInlineLimit: Number.MAX_SAFE_INTEGER,
        // public/ holds pictures for people who read the sources; the page itself needs none of them.
        copyPublicDir: false,
        cssCodeSplit: false,
        modulePreload: false,
        rolldownOptions: { output: { codeSplitting: false } },
      },
    }),
    generateBundle: {
      // After Vite's own last touches to the script.
      order: "post",
      handler(_options, bundle) {
        const page = bundle["index.html"];
        if (page?.type !== "asset") this.error("the build made no index.html");
        const scripts = new Map<string, string>();
        const styles = new Map<string, string>();
        const modules: string[] = [];
        for (const [file, item] of Object.entries(bundle)) {
          if (item === page) continue;
          if (item.type === "chunk") {
            scripts.set(file, item.code);
            modules.push(...Object.keys(item.modules));
          } else if (file.endsWith(".css")) styles.set(file, String(item.source));
          else this.error(`stray output file ${file}: import it so that it becomes part of the page`);
          delete bundle[file];
        }
        if (scripts.size !== 1) this.error(`one script expected, found: ${[...scripts.keys()].join(", ")}`);
        const { dependencies } = JSON.parse(readFileSync("package.json", "utf8")) as { dependencies: object };
        const licences = shippedLicences(modules, Object.keys(dependencies)).replaceAll("-->", "-- >");
        // At the end: a browser looks for the page's encoding in its first kilobyte.
        page.source = `${foldPage(String(page.source), scripts, styles)}<!--\n${licences}\n-->\n`;
      },
    },
  };
}
