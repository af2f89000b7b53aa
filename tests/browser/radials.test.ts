import { expect } from "vitest";
import { journey } from "./journey.ts";
import { drawn, parts, readLadder, settled, settledLadder } from "./parts.ts";

journey("few radials: the spread of how they may lie is shown, and each way can be planned", async ({ open }) => {
  const page = await open();
  await settled(page);
  const radials = page.getByRole("textbox", { name: "radials", exact: true }).first();
  await radials.fill("4");
  await radials.press("Enter");
  await settled(page);
  await page.getByRole("button", { name: "Radials in detail …" }).click();
  const dialog = page.getByRole("dialog", { name: "Radials in detail" });
  const rows = dialog.locator("tbody tr");
  await expect.poll(() => rows.count(), { timeout: 30_000 }).toBe(3);
  const table = await rows.evaluateAll((found) =>
    found.map((row) => ({
      lie: row.querySelector("th")!.textContent ?? "",
      forward: Number.parseFloat((row.querySelectorAll("td")[2]!.textContent ?? "").replace("−", "-")),
    })),
  );
  expect(table[0]!.lie).toContain("as planned");
  const slit = table.find((row) => row.lie.startsWith("slit in"))!;
  await page.keyboard.press("Escape");
  expect(await dialog.count()).toBe(0);

  // Planned so, it is what the page then says.
  await page.getByLabel("how the radials lie").selectOption({ label: slit.lie });
  await settled(page);
  const now = await page
    .getByRole("table", { name: /by elevation/ })
    .locator("tbody tr")
    .nth(4)
    .textContent();
  expect(now).toContain(slit.forward.toFixed(1).replace("-", "−"));
});

journey("by keyboard alone: bases joined by a wire, the answer follows, undone again", async ({ open }) => {
  const page = await open();
  const before = await settledLadder(page);
  const button = page.getByRole("button", { name: "Radials in detail …" });
  await button.focus();
  await page.keyboard.press("Enter");
  const bond = page.getByLabel("a wire joins the bases");
  for (let i = 0; i < 40 && !(await bond.evaluate((e) => e === document.activeElement)); i++)
    await page.keyboard.press("Tab");
  await page.keyboard.press("Space");
  expect(await bond.isChecked()).toBe(true);
  await page.keyboard.press("Escape");
  expect(await button.evaluate((e) => e === document.activeElement)).toBe(true);
  await drawn(page);
  const joined = await settledLadder(page);
  expect(joined).not.toEqual(before);
  await parts(page).undo.click();
  await settled(page);
  expect(await readLadder(page)).toEqual(before);
});
