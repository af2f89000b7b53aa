import { existsSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { launchBrowser } from "../support/launchBrowser.ts";
import { unpackBrowser } from "../support/unpackBrowser.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** For `launchBrowser`. */
    browserPath: string;
  }
}

/** Once, before any browser test: the page must have been built, and a browser must start. Says which one it is. */
export default async function setup(project: TestProject): Promise<void> {
  if (!existsSync("dist/index.html")) throw new Error("dist/index.html is missing: run `npm run build` first");
  const browserPath = await unpackBrowser();
  const browser = await launchBrowser(browserPath);
  console.log(`browser tests run in ${browser.browserType().name()} ${browser.version()}`);
  await browser.close();
  project.provide("browserPath", browserPath);
}
