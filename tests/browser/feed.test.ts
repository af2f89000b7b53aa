import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { journey } from "./journey.ts";
import { parts, settled, tabTo } from "./parts.ts";

const axe = readFileSync("node_modules/axe-core/axe.min.js", "utf8");

/** What the accessibility checker objects to in the room. */
async function objections(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const { violations, passes } = await page.evaluate(async () => {
    const checker = (window as unknown as { axe: typeof import("axe-core") }).axe;
    const found = await checker.run(".room--feedroom");
    return {
      passes: found.passes.length,
      violations: found.violations.flatMap((v) => v.nodes.map((node) => `${v.id}: ${node.target.join(" ")}`)),
    };
  });
  expect(passes).toBeGreaterThan(10);
  return violations;
}

const opener = (page: Page) => page.getByRole("button", { name: "Line, matches, fed pair" });
const room = (page: Page) => page.getByRole("region", { name: "From rig to antenna" });
const field = (page: Page, name: string) => room(page).getByRole("textbox", { name, exact: true });
const cableChoice = (page: Page) => room(page).getByRole("combobox", { name: "cable", exact: true });
const part = (page: Page, name: string) => room(page).getByRole("radio", { name, exact: true });
const partNames = ["Line", "Matches", "Fed pair", "Reversal", "Impedance", "Volts and choke"];

async function type(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).fill(text);
  await field(page, name).press("Enter");
}

/** The row of the plan's own frequency in the table under the line's chart. */
const atDesign = (page: Page) =>
  room(page)
    .getByRole("region", { name: /^At the band’s edges/ })
    .locator("tbody tr")
    .nth(1)
    .locator("td")
    .allTextContents();

/** Waits until the part that is open is solved in full. */
const solved = (page: Page) =>
  room(page)
    .getByText(/full-wave over this soil/)
    .last()
    .waitFor({ timeout: 60_000 });

describe("the feed room", { timeout: 180_000 }, () => {
  journey("a cable and its length: what the rig's meter sees, beside the feedpoint", async ({ open }) => {
    const page = await open();
    await settled(page);
    await opener(page).click();
    await solved(page);
    const short = await atDesign(page);
    await cableChoice(page).selectOption("rg-58c");
    await type(page, "length of the line", "90 m");
    const long = await atDesign(page);
    // R + jX, SWR at the feedpoint, SWR at the rig, matched loss, whole loss, power that arrives.
    expect(long[0]).toBe(short[0]);
    expect(long[1]).toBe(short[1]);
    expect(Number(long[2])).toBeLessThan(Number(short[2]));
    expect(Number(long[3])).toBeGreaterThan(4);
    expect(Number.parseFloat(long[5]!)).toBeLessThan(45);
    // The Yard stays beside it, and what is changed there changes here.
    await page.getByRole("textbox", { name: "driven length", exact: true }).fill("7.9 m");
    await page.keyboard.press("Enter");
    await room(page)
      .getByText(/The meter flatters/)
      .waitFor({ timeout: 30_000 });
    // It is all in the plan: undone step by step, and there after a reload.
    await parts(page).undo.click();
    await expect.poll(() => atDesign(page), { timeout: 30_000 }).toEqual(long);
    await page.reload();
    await settled(page);
    await opener(page).click();
    await solved(page);
    expect(await atDesign(page)).toEqual(long);
  });

  journey(
    "the recommended match, chosen, shows at the rig; the driven is cut to suit and solved again",
    async ({ open }) => {
      const page = await open();
      await settled(page);
      await opener(page).click();
      await solved(page);
      await type(page, "highest SWR to take", "1.09");
      await part(page, "Matches").check({ force: true });
      await room(page)
        .getByRole("heading", { name: /^Recommended: coil across the feed/ })
        .waitFor();
      await room(page).getByRole("button", { name: "Use the recommended match" }).click();
      const chosen = room(page).getByRole("radio", { name: /coil across the feed/ });
      expect(await chosen.isChecked()).toBe(true);
      await part(page, "Line").check({ force: true });
      const [, onLine] = await atDesign(page);
      expect(Number(onLine)).toBeLessThan(1.03);
      await part(page, "Matches").check({ force: true });
      const driven = page.getByRole("textbox", { name: "driven length", exact: true });
      expect(await driven.inputValue()).toBe("7.25 m");
      await room(page)
        .getByRole("button", { name: /^Shorten the driven to suit/ })
        .click();
      expect(Number.parseFloat(await driven.inputValue())).toBeLessThan(7.2);
      await settled(page);
      expect(await chosen.isChecked()).toBe(true);
    },
  );

  journey("the tips’ voltages, in full: kilovolts at full power, far above the base’s", async ({ open }) => {
    const page = await open();
    await settled(page);
    await opener(page).click();
    await type(page, "power at the rig", "400");
    await part(page, "Volts and choke").check({ force: true });
    await room(page).getByText("Voltages at tips and ends: full-wave over this soil.").waitFor({ timeout: 60_000 });
    const peak = async (where: RegExp) =>
      Number(
        (await room(page).getByRole("row", { name: where }).locator("td").last().textContent())!.replace(/\D/g, ""),
      );
    const tip = await peak(/^tip of the driven/);
    expect(tip).toBeGreaterThan(1500);
    expect(tip).toBeGreaterThan(8 * (await peak(/^base of the driven/)));
    expect(await peak(/^tip of the reflector/)).toBeLessThan(tip);
    expect(await peak(/^ends of the driven’s radials/)).toBeLessThan(tip / 4);
  });

  journey("the fed pair beside the reflector, and the beam turned round by relays, in full", async ({ open }) => {
    const page = await open();
    await settled(page);
    await opener(page).click();
    await part(page, "Fed pair").check({ force: true });
    await solved(page);
    const verdict = room(page).getByRole("region", { name: "Is the harness worth it?" });
    expect(await verdict.textContent()).toMatch(/against one vertical: the reflector gives \+3\.\d dB ahead/);
    const rows = room(page).getByRole("region", { name: "Ways to use the second vertical" }).locator("tbody tr");
    expect(await rows.count()).toBe(8);
    // The reflector's row says what the headline says.
    const headline = await parts(page).answer.textContent();
    const [gained, back] = await rows.nth(1).locator("td").allTextContents();
    expect(headline).toContain(gained);
    expect(headline).toContain(back);
    await part(page, "Reversal").check({ force: true });
    await room(page).getByRole("region", { name: "The load" }).waitFor({ timeout: 30_000 });
    await solved(page);
    expect(
      await room(page)
        .getByRole("img", { name: /Front: feed contact closed/ })
        .count(),
    ).toBe(1);
    await part(page, "Reverse").check({ force: true });
    expect(
      await room(page)
        .getByRole("img", { name: /Back: feed contact closed/ })
        .count(),
    ).toBe(1);
  });

  journey("by keyboard alone: open, choose a cable, every part, and back to where one came from", async ({ open }) => {
    const page = await open();
    await settled(page);
    await tabTo(page, opener(page), 120);
    await page.keyboard.press("Enter");
    expect(await room(page).evaluate((box) => box === document.activeElement)).toBe(true);
    await tabTo(page, part(page, "Line"));
    for (const name of partNames.slice(1)) {
      await page.keyboard.press("ArrowRight");
      expect(await part(page, name).isChecked()).toBe(true);
    }
    const cable = cableChoice(page);
    await tabTo(page, cable);
    await page.keyboard.press("ArrowDown");
    expect(await cable.inputValue()).toBe("rg-8x");
    await tabTo(page, field(page, "length of the line"));
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type("35 m");
    await page.keyboard.press("Enter");
    expect(await field(page, "length of the line").inputValue()).toBe("35.00 m");
    await page.keyboard.press("Escape");
    await expect.poll(() => room(page).count()).toBe(0);
    await expect.poll(() => opener(page).evaluate((button) => button === document.activeElement)).toBe(true);
  });

  journey("bad input is refused at its field, and nothing is lost", async ({ open }) => {
    const page = await open();
    await settled(page);
    await opener(page).click();
    // Else the preview's figures give way to the full ones in the midst of it.
    await solved(page);
    await cableChoice(page).selectOption("own");
    for (const [name, typed, says] of [
      ["velocity factor", "1.3", /at most 1/],
      ["loss 2, dB per 100 m", "-1", /at least 0/],
      ["length of the line", "0", /at least 0\.1/],
    ] as const) {
      const before = await atDesign(page);
      await type(page, name, typed);
      expect(await field(page, name).getAttribute("aria-invalid")).toBe("true");
      expect(await field(page, name).inputValue()).toBe(typed);
      await room(page).getByText(says).first().waitFor();
      expect(await atDesign(page)).toEqual(before);
      await field(page, name).press("Escape");
    }
  });

  const looks = [
    { name: "desktop, light", colorScheme: "light", viewport: { width: 1440, height: 900 } },
    { name: "laptop, dark", colorScheme: "dark", viewport: { width: 1280, height: 720 } },
    { name: "phone, light", colorScheme: "light", viewport: { width: 390, height: 844 } },
  ] as const;
  journey.for(looks)(
    "no accessibility fault in any part, and nothing runs out of the page: $name",
    async ({ colorScheme, viewport }, { open }) => {
      const page = await open({ colorScheme, viewport });
      await settled(page);
      await opener(page).click();
      await solved(page);
      await part(page, "Matches").check({ force: true });
      await room(page)
        .getByRole("radio", { name: /L network/ })
        .first()
        .check();
      const faults: string[] = [];
      for (const name of partNames) {
        await part(page, name).check({ force: true });
        await solved(page);
        for (const fault of await objections(page)) faults.push(`${name}: ${fault}`);
        const over = await room(page).evaluate((box) =>
          Math.max(document.documentElement.scrollWidth - innerWidth, box.scrollWidth - box.clientWidth),
        );
        if (over > 0) faults.push(`${name}: ${over} px too wide`);
      }
      expect(faults).toEqual([]);
    },
  );
});
