import { readFileSync } from "node:fs";
import type { Download, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { journey } from "./journey.ts";
import { drawn, parts, settled, tabTo } from "./parts.ts";

const axe = readFileSync("node_modules/axe-core/axe.min.js", "utf8");

/** What the accessibility checker objects to in the room. */
async function objections(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const { violations, passes } = await page.evaluate(async () => {
    const checker = (window as unknown as { axe: typeof import("axe-core") }).axe;
    const found = await checker.run(".room--trials");
    return {
      passes: found.passes.length,
      violations: found.violations.flatMap((v) => v.nodes.map((node) => `${v.id}: ${node.target.join(" ")}`)),
    };
  });
  expect(passes).toBeGreaterThan(10);
  return violations;
}

const opener = (page: Page) => page.getByRole("button", { name: "Walk, map, find best" });
const room = (page: Page) => page.getByRole("region", { name: "Trials" });
const part = (page: Page, name: string) => room(page).getByRole("radio", { name, exact: true });
const button = (page: Page, name: string | RegExp) => room(page).getByRole("button", { name, exact: true });
const partNames = ["Walk", "Map", "Find best", "Radial wire", "Band", "Tolerance"];
const verbs = ["Walk it", "Map it", "Find the best", "Lay it out", "Look across the band", "Vary it"];
const map = (page: Page) => room(page).getByRole("application", { name: /^Map: arrow keys/ });
const busy = (page: Page) => room(page).getAttribute("data-busy");

/** Opens a part, starts its trial, and waits for its full answer. */
async function tryOut(page: Page, name: string): Promise<void> {
  const verb = verbs[partNames.indexOf(name)]!;
  await part(page, name).check({ force: true });
  await button(page, verb).click();
  await button(page, `${verb} again`).waitFor({ timeout: 150_000 });
  await room(page)
    .getByText(/^Full-wave over this soil: /)
    .waitFor();
}

async function savedText(download: Download): Promise<string> {
  return readFileSync(await download.path(), "utf8");
}

async function saved(page: Page, item: string | RegExp): Promise<Download> {
  await button(page, "Save").click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("menuitem", { name: item }).first().click(),
  ]);
  return download;
}

/** Numbers of a text that follow the given words, one for each. */
function figuresAfter(text: string | null, words: readonly string[]): number[] {
  return words.map((word) => Number.parseFloat(text!.split(`${word} `)[1]!.replace("−", "-")));
}

describe("the room of trials", { timeout: 300_000 }, () => {
  journey(
    "a walk in full: where it is quiet, and the reflector put there from the chart, undone in one step",
    async ({ open }) => {
      const page = await open();
      await settled(page);
      await opener(page).click();
      await tryOut(page, "Walk");
      const slider = room(page).getByRole("slider", { name: "Front to back: reflector at" });
      // At the plan's own spacing the curves say what the headline says.
      const headline = await parts(page).answer.textContent();
      const [frontToBack] = figuresAfter(await slider.getAttribute("aria-valuetext"), ["straight back"]);
      expect(headline).toContain(frontToBack!.toFixed(1));
      // A drag over the chart moves the reflector in the Yard.
      const box = (await slider.boundingBox())!;
      await page.mouse.move(box.x + 0.5 * box.width, box.y + 40);
      await page.mouse.down();
      for (let i = 1; i <= 8; i++) await page.mouse.move(box.x + (0.5 - 0.03 * i) * box.width, box.y + 40);
      await page.mouse.up();
      const moved = Number.parseFloat(await parts(page).spacing.inputValue());
      expect(moved).toBeGreaterThan(4);
      expect(moved).toBeLessThan(5.9);
      // What the curve promised there is what the full answer gives.
      await settled(page);
      const promised = figuresAfter(await slider.getAttribute("aria-valuetext"), ["straight back", "worst behind"]);
      for (const figure of promised) expect(await parts(page).answer.textContent()).toContain(figure.toFixed(1));
      await parts(page).undo.click();
      expect(await parts(page).spacing.inputValue()).toBe("5.90 m");
    },
  );

  journey(
    "a map in full: its figures are the headline's; go there by mouse and by keys; figures and pictures saved",
    async ({ open }) => {
      const page = await open();
      await settled(page);
      await opener(page).click();
      await tryOut(page, "Map");
      const words = ["front to back", "gain ahead", "front to worst behind", "SWR"];
      expect(await objections(page)).toEqual([]);
      const [frontToBack, , , swr] = figuresAfter(await map(page).getAttribute("aria-label"), words);
      const headline = await parts(page).answer.textContent();
      expect(headline).toContain(frontToBack!.toFixed(1));
      expect(headline).toContain(swr!.toFixed(2));

      // A press on it moves the design, as one step.
      const box = (await map(page).boundingBox())!;
      await page.mouse.click(box.x + 0.3 * box.width, box.y + 0.5 * box.height);
      const [spacing, length] = [
        await parts(page).spacing.inputValue(),
        await parts(page).reflectorLength.inputValue(),
      ];
      expect(spacing).not.toBe("5.90 m");
      expect(Number.parseFloat(length)).toBeCloseTo(7.6, 1);
      await page.mouse.move(5, 5);
      await settled(page);
      const there = figuresAfter(await map(page).getAttribute("aria-label"), words);
      expect(await parts(page).answer.textContent()).toContain(there[0]!.toFixed(1));
      await parts(page).undo.click();
      expect(await parts(page).spacing.inputValue()).toBe("5.90 m");
      expect(await parts(page).reflectorLength.inputValue()).toBe("7.60 m");

      // By keyboard: a cursor, then Enter.
      await map(page).focus();
      for (const key of ["ArrowLeft", "Shift+ArrowLeft", "ArrowDown", "Enter"]) await page.keyboard.press(key);
      expect(Number.parseFloat(await parts(page).spacing.inputValue())).toBeLessThan(5.5);
      expect(Number.parseFloat(await parts(page).reflectorLength.inputValue())).toBeLessThan(7.6);
      await parts(page).undo.click();

      const csv = await savedText(await saved(page, "Figures as CSV"));
      expect(csv).toContain("# map: 30 m pair on the back lawn (invented)");
      expect(csv).toMatch(/# Full-wave over this soil/);
      expect(csv).toMatch(/# \d{4}-\d\d-\d\d \d\d:\d\d UTC/);
      expect(csv).toContain("gain ahead [dBi]");
      expect(
        csv
          .trim()
          .split("\r\n")
          .filter((line) => !line.startsWith("#")),
      ).toHaveLength(1 + 60 * 60);
      const svg = await savedText(await saved(page, /SVG$/));
      expect(svg.startsWith("<svg")).toBe(true);
      expect(svg).toContain("loudest ahead");
      const png = await saved(page, /PNG$/);
      expect([...readFileSync(await png.path()).subarray(1, 4)].map((c) => String.fromCharCode(c)).join("")).toBe(
        "PNG",
      );
    },
  );

  journey(
    "stopped in the midst: no worker solves on; it goes on from there; another room does not stop it",
    async ({ open }) => {
      const page = await open();
      await settled(page);
      await opener(page).click();
      await part(page, "Map").check({ force: true });
      await button(page, "Map it").click();
      await room(page)
        .getByText(/^Full answer\. [1-9]\d* of/)
        .waitFor({ timeout: 60_000 });
      expect(Number(await busy(page))).toBeGreaterThan(0);
      await button(page, "Stop").click();
      await button(page, "Go on").waitFor();
      await expect.poll(() => busy(page), { timeout: 5000 }).toBe("0");
      const state = await room(page).getByRole("region", { name: "This trial" }).textContent();
      await page.waitForTimeout(700);
      expect(await busy(page)).toBe("0");
      expect(await room(page).getByRole("region", { name: "This trial" }).textContent()).toBe(state);
      // What can be shown by then is the quick picture or a part of the full one, and says which.
      expect(state).toMatch(/Quick preview of this soil|Full-wave over this soil, so far/);

      await button(page, "Go on").click();
      await button(page, "Close").click();
      await page.getByRole("button", { name: "Line, matches, fed pair" }).click();
      await page.getByRole("region", { name: "From rig to antenna" }).getByRole("button", { name: "Close" }).click();
      await opener(page).click();
      await button(page, "Map it again").waitFor({ timeout: 150_000 });
      expect(await part(page, "Map").isChecked()).toBe(true);
      expect(await busy(page)).toBe("0");
    },
  );

  journey(
    "every part in full, without objections of the accessibility checker; what the search finds can be used",
    async ({ open }) => {
      const page = await open();
      await settled(page);
      await opener(page).click();
      for (const name of ["Find best", "Radial wire", "Band", "Tolerance"]) {
        await tryOut(page, name);
        expect(await objections(page)).toEqual([]);
      }
      await part(page, "Band").check({ force: true });
      expect(
        await room(page)
          .getByText(/^The beam looks ahead all the way/)
          .count(),
      ).toBe(1);
      await part(page, "Tolerance").check({ force: true });
      expect(
        await room(page)
          .getByText(/^Built within these errors, 90 of 100 have/)
          .count(),
      ).toBe(1);
      await part(page, "Find best").check({ force: true });
      await button(page, "Use 1").click();
      expect(await parts(page).spacing.inputValue()).not.toBe("5.90 m");
      // The search was begun from another plan: it says so.
      await room(page)
        .getByText(/^Of an earlier plan: .*spacing 5\.90 m, now/)
        .waitFor();
      await parts(page).undo.click();
      await part(page, "Radial wire").check({ force: true });
      await room(page)
        .getByRole("button", { name: /^Use best lying/ })
        .click();
      expect(await page.getByRole("textbox", { name: "spacing", exact: true }).inputValue()).toBe("5.90 m");
      await room(page)
        .getByText(/^Of an earlier plan: radials/)
        .waitFor();
    },
  );

  journey("by keyboard alone: open, walk, go through the parts, and back to where one came from", async ({ open }) => {
    const page = await open();
    await settled(page);
    await tabTo(page, opener(page), 120);
    await page.keyboard.press("Enter");
    expect(await room(page).evaluate((box) => box === document.activeElement)).toBe(true);
    await tabTo(page, button(page, "Walk it"));
    await page.keyboard.press("Enter");
    await button(page, "Walk it again").waitFor({ timeout: 100_000 });
    expect(await objections(page)).toEqual([]);
    await tabTo(page, room(page).getByRole("slider", { name: "Front to back: reflector at" }));
    await page.keyboard.press("Shift+ArrowRight");
    expect(await parts(page).spacing.inputValue()).toBe("5.95 m");
    await part(page, "Walk").focus();
    for (const name of partNames.slice(1)) {
      await page.keyboard.press("ArrowRight");
      expect(await part(page, name).isChecked()).toBe(true);
    }
    await page.keyboard.press("Escape");
    await expect.poll(() => room(page).count()).toBe(0);
    await expect.poll(() => opener(page).evaluate((one) => one === document.activeElement)).toBe(true);
  });

  journey("a worker that breaks is told of, and the trial can be taken up again", async ({ open, browser }) => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    await context.addInitScript(() => {
      const post = Worker.prototype.postMessage;
      Object.assign(window, { breakWorkers: false });
      Worker.prototype.postMessage = function (this: Worker, message: unknown, transfer?: unknown) {
        if ((window as unknown as { breakWorkers: boolean }).breakWorkers)
          this.dispatchEvent(new ErrorEvent("error", { message: "out of memory" }));
        else Reflect.apply(post, this, [message, transfer]);
      };
    });
    const page = await open({ context });
    await settled(page);
    await opener(page).click();
    await page.evaluate(() => Object.assign(window, { breakWorkers: true }));
    await part(page, "Walk").check({ force: true });
    await button(page, "Walk it").click();
    await room(page).getByRole("alert").filter({ hasText: "out of memory" }).waitFor();
    await page.evaluate(() => Object.assign(window, { breakWorkers: false }));
    await button(page, "Go on").click();
    await button(page, "Walk it again").waitFor({ timeout: 100_000 });
    expect(await room(page).getByRole("alert").count()).toBe(0);
  });

  journey("on a phone nothing is wider than the page", async ({ open }) => {
    const page = await open({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await drawn(page);
    await opener(page).click();
    for (const name of partNames) {
      await part(page, name).check({ force: true });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    }
    await tryOut(page, "Walk");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });
});
