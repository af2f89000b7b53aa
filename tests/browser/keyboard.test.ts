import { expect } from "vitest";
import { journey } from "./journey.ts";
import { parts, settled, settledLadder, tabTo } from "./parts.ts";

journey("the newcomer's journey by keyboard alone", async ({ open }) => {
  const page = await open({ acceptDownloads: true });
  const at = parts(page);
  const before = await settledLadder(page);

  // Move the reflector with the arrow keys, as one step.
  await tabTo(page, at.reflectorOnPlan);
  const where = await at.reflectorOnPlan.getAttribute("aria-valuetext");
  for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowUp");
  const moved = await settledLadder(page);
  expect(moved).not.toEqual(before);
  expect(await at.reflectorOnPlan.getAttribute("aria-valuetext")).not.toBe(where);

  // Type a length.
  await tabTo(page, at.reflectorLength);
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("10.9 m");
  await page.keyboard.press("Enter");
  const typed = await settledLadder(page);
  expect(typed).not.toEqual(moved);

  // Undo both from the keyboard, and do them again.
  await page.keyboard.press("ControlOrMeta+z");
  expect(await settledLadder(page)).toEqual(moved);
  await page.keyboard.press("ControlOrMeta+z");
  expect(await settledLadder(page)).toEqual(before);
  await page.keyboard.press("ControlOrMeta+y");
  await page.keyboard.press("ControlOrMeta+y");
  expect(await settledLadder(page)).toEqual(typed);

  // Save, by shortcut and by menu.
  const [byKey] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("ControlOrMeta+s")]);
  expect(byKey.suggestedFilename()).toMatch(/\.hindwire\.json$/);
  await at.planMenu.focus(); // from the foot of the page it is a long way round
  await page.keyboard.press("Enter");
  await page.keyboard.press("s");
  const [byMenu] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  expect(byMenu.suggestedFilename()).toBe(byKey.suggestedFilename());
  expect(await at.planMenu.evaluate((button) => button === document.activeElement)).toBe(true);

  // The link: the dialog takes the focus and gives it back.
  await page.keyboard.press("Enter");
  await page.keyboard.press("l");
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog");
  await dialog.waitFor();
  expect(await dialog.evaluate((box) => box.contains(document.activeElement))).toBe(true);
  await page.keyboard.press("Escape");
  await expect.poll(() => dialog.count()).toBe(0);
  expect(await at.planMenu.evaluate((button) => button === document.activeElement)).toBe(true);

  // And the work is there after a reload.
  await page.reload();
  await settled(page);
  expect(await settledLadder(page)).toEqual(typed);
});

journey(
  "every control that can be clicked can be reached with Tab, and looks different when it has the focus",
  async ({ open }) => {
    const page = await open({ reducedMotion: "reduce" });
    await settled(page);
    const wanted = await page.evaluate(() => {
      const tabbable = "button, input, select, textarea, a[href], summary, [tabindex='0']";
      const seen = [...document.querySelectorAll<HTMLElement>(tabbable)].filter((e) => {
        if (e.matches(":disabled, [tabindex='-1']") || !e.checkVisibility({ visibilityProperty: true })) return false;
        // Of a group of radio buttons Tab reaches the chosen one.
        return !(e instanceof HTMLInputElement && e.type === "radio" && !e.checked);
      });
      /** How a control, what is in it and what holds it are drawn. */
      const looks = (e: Element) =>
        [e, e.parentElement!, ...e.querySelectorAll("*")]
          .map((one) => getComputedStyle(one))
          .map((s) => [s.outline, s.boxShadow, s.border, s.backgroundColor, s.fill, s.stroke, s.strokeWidth, s.opacity])
          .join(";");
      const before = seen.map(looks);
      const reached: (boolean | undefined)[] = seen.map(() => undefined);
      document.addEventListener("focusin", (event) => {
        const i = seen.indexOf(event.target as HTMLElement);
        if (i >= 0) reached[i] = looks(seen[i]!) !== before[i];
      });
      const nameOf = (e: HTMLElement) =>
        e.getAttribute("aria-label") ?? (e as HTMLInputElement).labels?.[0]?.textContent ?? e.textContent ?? e.tagName;
      Object.assign(window, {
        missed: (how: boolean | undefined) => seen.filter((_, i) => reached[i] === how).map(nameOf),
      });
      return seen.length;
    });
    expect(wanted).toBeGreaterThan(15);
    for (let i = 0; i < wanted + 20; i++) await page.keyboard.press("Tab");
    const missed = (how: boolean | undefined) =>
      page.evaluate((h) => (window as unknown as { missed(h: unknown): string[] }).missed(h), how);
    expect(await missed(undefined), "not reached").toEqual([]);
    expect(await missed(false), "looks the same").toEqual([]);
  },
);
