import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { journey } from "./journey.ts";
import { parts, settled } from "./parts.ts";

const axe = readFileSync("node_modules/axe-core/axe.min.js", "utf8");

/** What the accessibility checker objects to, one line each. */
async function objections(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const { violations, passes } = await page.evaluate(async () => {
    const checker = (window as unknown as { axe: typeof import("axe-core") }).axe;
    const found = await checker.run(document);
    return {
      passes: found.passes.length,
      violations: found.violations.flatMap((v) =>
        v.nodes.map((node) => `${v.id}: ${node.target.join(" ")} ${node.failureSummary ?? ""}`.replace(/\\s+/g, " ")),
      ),
    };
  });
  // A checker that looked at nothing objects to nothing.
  expect(passes).toBeGreaterThan(20);
  return violations;
}

const looks = [
  { name: "desktop, light", colorScheme: "light", viewport: { width: 1440, height: 900 } },
  { name: "desktop, dark", colorScheme: "dark", viewport: { width: 1440, height: 900 } },
  { name: "phone, light", colorScheme: "light", viewport: { width: 390, height: 844 } },
  { name: "phone, dark", colorScheme: "dark", viewport: { width: 390, height: 844 } },
] as const;

journey.for(looks)("no accessibility fault: $name", async ({ colorScheme, viewport }, { open }) => {
  const page = await open({ colorScheme, viewport });
  await settled(page);
  expect(await objections(page)).toEqual([]);
});

journey.for(looks.slice(0, 2))(
  "no accessibility fault with panels open: $name",
  async ({ colorScheme, viewport }, { open }) => {
    const page = await open({ colorScheme, viewport });
    await settled(page);
    const at = parts(page);
    // Every button of the top bar that opens something, one after the other.
    const openers = page.getByRole("banner").locator("button[aria-expanded]");
    const count = await openers.count();
    expect(count).toBeGreaterThan(3);
    for (let i = 0; i < count; i++) {
      await openers.nth(i).click();
      expect(await openers.nth(i).getAttribute("aria-expanded")).toBe("true");
      expect(await objections(page)).toEqual([]);
      await page.keyboard.press("Escape");
    }
    await at.planMenu.click();
    await at.item(/Link to this plan/).click();
    await page.getByRole("dialog").waitFor();
    expect(await objections(page)).toEqual([]);
    await page.keyboard.press("Escape");
    // Everything in it unfolded.
    await page.getByRole("button", { name: "Radials in detail …" }).click();
    const details = page.getByRole("dialog", { name: "Radials in detail" });
    await details.getByLabel("insulated", { exact: true }).check();
    await details.getByLabel(/a stake under each base/).check();
    await details.getByRole("button", { name: "Lay them one by one" }).first().click();
    expect(await objections(page)).toEqual([]);
  },
);

journey("no accessibility fault in the projector's colours, nor while an input is refused", async ({ open }) => {
  const page = await open();
  await settled(page);
  const view = page.getByRole("banner").getByRole("button", { name: "View" });
  await view.click();
  await page.getByText("Projector", { exact: true }).click();
  await page.keyboard.press("Escape");
  await parts(page).reflectorLength.fill("nonsense");
  await parts(page).reflectorLength.press("Enter");
  expect(await objections(page)).toEqual([]);
});

journey("the checker does find a fault that is planted", async ({ open }) => {
  const page = await open();
  await settled(page);
  await page.evaluate(() => {
    const picture = document.createElement("img");
    picture.src = "data:image/gif;base64,R0lGODlhAQABAAAAACw=";
    document.querySelector("main")!.append(picture);
  });
  expect((await objections(page)).join()).toContain("image-alt");
});
