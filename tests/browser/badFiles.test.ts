import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { journey } from "./journey.ts";
import { drawn, parts } from "./parts.ts";

const folder = mkdtempSync(join(tmpdir(), "hindwire-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** The plan on screen as the page itself saves it. */
async function savedText(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("ControlOrMeta+s")]);
  return readFileSync(await download.path(), "utf8");
}

const damages: readonly { name: string; damage(text: string): string; says: RegExp }[] = [
  { name: "cut in half", damage: (text) => text.slice(0, text.length / 2), says: /cut off.*line \d+, column \d+/s },
  { name: "another program's", damage: () => '{"type":"FeatureCollection","features":[]}', says: /not opened/ },
  { name: "a newer version's", damage: (text) => text.replace('"version": 1', '"version": 2'), says: /newer/i },
  {
    name: "with a word for a number",
    damage: (text) => text.replace(/"frequency_MHz": [\d.]+/, '"frequency_MHz": "forty metres"'),
    says: /frequency/i,
  },
  {
    name: "with a height below nothing",
    damage: (text) => text.replace(/"height_m": 7[\d.]+/, '"height_m": -3'),
    says: /height|-3|−3/,
  },
  { name: "empty", damage: () => "", says: /empty/ },
  { name: "a picture", damage: () => "\u0089PNG\r\n\u001a\n", says: /not a plan file/ },
  { name: "10 MB long", damage: (text) => text.trimEnd() + " ".repeat(10_500_000), says: /10.?000.?000/ },
];

journey.for(damages)(
  "a file $name is refused whole, with the reason, and nothing is lost",
  async ({ name, damage, says }, { open }) => {
    const page = await open();
    const at = parts(page);
    await at.title.fill("Mine");
    await at.spacing.fill("7 m");
    await at.spacing.press("Enter");
    const text = await savedText(page);
    const path = join(folder, `${name}.json`);
    const damaged = damage(text);
    expect(damaged).not.toBe(text);
    writeFileSync(path, damaged);

    await at.fileChooser.setInputFiles(path);
    const refusal = at.alert.filter({ hasText: "was not opened" });
    await refusal.waitFor();
    expect(await refusal.textContent()).toMatch(says);
    expect(await savedText(page)).toBe(text);
    await drawn(page);
    await page.reload();
    await drawn(page);
    expect(await savedText(page)).toBe(text);

    // The same file undamaged is taken: the refusal was for the damage.
    writeFileSync(path, text.replace('"title": "Mine"', '"title": "From the file"'));
    await at.fileChooser.setInputFiles(path);
    await expect.poll(() => at.title.inputValue()).toBe("From the file");
  },
);

journey("a damaged link is refused, and nothing is lost", async ({ open, browser }) => {
  const context = await browser.newContext();
  const page = await open({ context });
  const at = parts(page);
  await at.title.fill("Mine");
  await at.planMenu.click();
  await at.item(/Link to this plan/).click();
  const link = await page.getByRole("dialog").getByRole("textbox").inputValue();
  const hash = link.slice(link.indexOf("#"));
  await page.close();

  const cut = await open({ context, hash: hash.slice(0, -10) });
  await parts(cut).alert.filter({ hasText: "was not opened" }).waitFor();
  expect(await parts(cut).title.inputValue()).toBe("Mine");
});

journey("work kept by a newer page is left untouched, and said", async ({ open, browser }) => {
  const context = await browser.newContext();
  const first = await open({ context });
  await parts(first).title.fill("Mine");
  await expect.poll(() => first.evaluate(() => localStorage.getItem("hindwire.v1.plan") ?? "")).toContain("Mine");
  const newer = await first.evaluate(() => {
    const text = localStorage.getItem("hindwire.v1.plan")!.replace('"version": 1', '"version": 7');
    localStorage.setItem("hindwire.v1.plan", text);
    return text;
  });
  await first.close();

  const page = await open({ context });
  await parts(page).alert.filter({ hasText: "put aside untouched" }).waitFor();
  await parts(page).spacing.fill("7 m");
  await parts(page).spacing.press("Enter");
  await page.waitForTimeout(800); // past the pause of the autosave
  const kept = await page.evaluate(() => Object.keys(localStorage).map((key) => localStorage.getItem(key)));
  expect(kept).toContain(newer);
});
