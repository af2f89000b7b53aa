import { mkdirSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { launchBrowser } from "./launchBrowser.ts";
import { unpackBrowser } from "./unpackBrowser.ts";

/**
 * `npm run shots` takes pictures of the built page for people to look at, into .shots/. Nothing compares them.
 * `npm run shots -- dark` takes only those whose name holds "dark".
 */
const sizes = [
  { name: "wide", width: 1440, height: 900 },
  { name: "laptop", width: 1280, height: 720 },
  { name: "phone", width: 390, height: 844 },
] as const;

const folder = resolve(".shots");
mkdirSync(folder, { recursive: true });
const asked = process.argv.slice(2);
const browser = await launchBrowser(await unpackBrowser());
for (const colorScheme of ["light", "dark"] as const)
  for (const { name, width, height } of sizes) {
    const shot = `${name}-${colorScheme}`;
    if (asked.length > 0 && !asked.some((word) => shot.includes(word))) continue;
    const context = await browser.newContext({ viewport: { width, height }, colorScheme, hasTouch: name === "phone" });
    const page = await context.newPage();
    page.on("console", (message) => console.log(`${shot}: ${message.text()}`));
    page.on("pageerror", (error) => console.log(`${shot}: ${error.message}`));
    await page.goto(pathToFileURL(resolve("dist/index.html")).href);
    // Until the answer and the sweep behind it are drawn.
    await page.locator('[data-answer="fresh"]').first().waitFor();
    await page.getByText("No curve yet.").waitFor({ state: "hidden" });
    await page.waitForTimeout(500);
    await page.screenshot({ path: `${folder}/${shot}.png` });
    await page.screenshot({ path: `${folder}/${shot}-whole.png`, fullPage: true });
    await context.close();
    console.log(`.shots/${shot}.png`);
  }
await browser.close();
