import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";

/** The page's parts by what a person calls them: roles and names, as a screen reader has them. */
export function parts(page: Page) {
  const bar = page.getByRole("banner");
  const field = (name: string) => page.getByRole("textbox", { name, exact: true });
  return {
    title: field("Title of this plan"),
    answer: page.getByRole("region", { name: "What this design does" }),
    ladder: page.getByRole("table", { name: /by elevation/ }),
    reflectorOnPlan: page.getByRole("slider", { name: "Spacing of the reflector" }),
    reflectorTip: page.getByRole("slider", { name: "Length of the reflector" }),
    spacing: field("spacing"),
    reflectorLength: field("reflector length"),
    undo: bar.getByRole("button", { name: /^Undo/ }),
    redo: bar.getByRole("button", { name: /^Redo/ }),
    planMenu: bar.getByRole("button", { name: "Plan", exact: true }),
    item: (name: string | RegExp) => page.getByRole("menuitem", { name }),
    alert: page.getByRole("alert"),
    /** The hidden chooser behind "Open a plan file …". */
    fileChooser: page.getByLabel("Plan file to open"),
  };
}

/** Waits until what is shown belongs to the plan on screen, be it the preview. */
export async function drawn(page: Page): Promise<void> {
  await expect.poll(() => parts(page).answer.getAttribute("data-answer"), { timeout: 30_000 }).toBe("fresh");
}

/** Waits until the best answer that can come for the plan on screen is there. */
export async function settled(page: Page): Promise<void> {
  const { answer } = parts(page);
  const isSettled = () =>
    answer.evaluate((e) => e.getAttribute("data-answer") === "fresh" && !e.querySelector('[data-kind="coming"]'));
  await expect.poll(isSettled, { timeout: 60_000 }).toBe(true);
}

/** The ladder as it stands, top rung first: elevation, what is gained there, front-to-back, front to worst behind. */
export async function readLadder(page: Page): Promise<number[][]> {
  const rows = await parts(page)
    .ladder.locator("tbody tr")
    .evaluateAll((found) =>
      found.map((row) => [...row.querySelectorAll("th, td:not(:nth-child(2))")].map((cell) => cell.textContent ?? "")),
    );
  return rows.map((row) => row.map((text) => Number.parseFloat(text.replace("−", "-"))));
}

/** The ladder once the best answer is there. */
export async function settledLadder(page: Page): Promise<number[][]> {
  await settled(page);
  return readLadder(page);
}

/** Drags something with the mouse, in small steps, as a hand does. */
export async function dragBy(page: Page, what: Locator, across_px: number, down_px: number, steps = 12): Promise<void> {
  await what.scrollIntoViewIfNeeded();
  const box = await what.boundingBox();
  if (!box) throw new Error("nothing to drag: it is not on the page");
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= steps; i++) await page.mouse.move(x + (across_px * i) / steps, y + (down_px * i) / steps);
  await page.mouse.up();
}

/** Moves the focus with the Tab key alone until it is on `target`. */
export async function tabTo(page: Page, target: Locator, most = 80): Promise<void> {
  for (let presses = 0; presses < most; presses++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`not reached by ${most} presses of Tab: ${String(target)}`);
}
