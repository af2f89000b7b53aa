import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { expect, inject, test } from "vitest";
import { launchBrowser } from "../support/launchBrowser.ts";

/** The built page, as a person opens it from a disk. */
export const pageFile = resolve("dist/index.html");
export const pageAddress = pathToFileURL(pageFile).href;

export interface Opening extends BrowserContextOptions {
  /** Follows the address, with its "#". */
  readonly hash?: string;
  /** Open in this context, to share its storage; else in a new one, with none. */
  readonly context?: BrowserContext;
}

/** Opens the built page, with the network unplugged, and waits until it has drawn something. */
export type Open = (opening?: Opening) => Promise<Page>;

/**
 * A `test` that is given `open`. Whatever page it opened must have been silent when the test ends: no message in the
 * console, no uncaught error, and no request for anything but itself.
 */
export const journey = test.extend<{ browser: Browser; open: Open }>({
  browser: [
    // biome-ignore lint/correctness/noEmptyPattern: vitest reads which fixtures are wanted from this pattern
    async ({}, use) => {
      const browser = await launchBrowser(inject("browserPath"));
      await use(browser);
      await browser.close();
    },
    { scope: "file" },
  ],
  open: async ({ browser }, use) => {
    const heard: string[] = [];
    const contexts = new Set<BrowserContext>();
    await use(async ({ hash = "", context: given, ...options } = {}) => {
      const context = given ?? (await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options }));
      contexts.add(context);
      await context.setOffline(true);
      context.setDefaultTimeout(10_000);
      const page = await context.newPage();
      listen(page, heard);
      await page.goto(pageAddress + hash);
      await page.locator("#root > *").first().waitFor();
      return page;
    });
    for (const context of contexts) await context.close();
    expect(heard).toEqual([]);
  },
});

/** Notes all that `page` says or asks for. */
export function listen(page: Page, heard: string[]): void {
  page.on("console", (message) => heard.push(`console ${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => heard.push(`error: ${error.stack ?? error.message}`));
  page.on("request", (request) => {
    const address = request.url();
    if (!/^(?:data|blob):/.test(address) && !address.startsWith(pageAddress)) heard.push(`request: ${address}`);
  });
}

/** The built page's text. */
export const pageText = () => readFileSync(pageFile, "utf8");
