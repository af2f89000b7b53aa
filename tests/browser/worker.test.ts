import { expect } from "vitest";
import { journey, pageAddress } from "./journey.ts";
import { parts, settledLadder } from "./parts.ts";

journey("a browser that starts no worker is told of, with a way to try again that works", async ({ open, browser }) => {
  const context = await browser.newContext();
  await context.addInitScript(() => {
    const Kept = window.Worker;
    const refuse = function Worker(): never {
      throw new DOMException("no workers here");
    };
    Object.assign(window, {
      Worker: refuse,
      allowWorkers: () => {
        window.Worker = Kept;
      },
    });
  });
  const page = await open({ context });
  const at = parts(page);
  const trouble = at.answer.getByRole("alert");
  await trouble.filter({ hasText: "no workers here" }).waitFor();
  expect(await at.answer.getAttribute("data-answer")).toBe("old");
  // The plan can be worked on all the same.
  expect(await at.spacing.inputValue()).toMatch(/\d/);

  await page.evaluate(() => (window as unknown as { allowWorkers(): void }).allowWorkers());
  await trouble.getByRole("button", { name: "Try again" }).click();
  for (const row of await settledLadder(page)) expect(row.every(Number.isFinite)).toBe(true);
});

journey(
  "when the worker fails over a change, the last good answer stays and is marked old",
  async ({ open, browser }) => {
    const context = await browser.newContext();
    await context.addInitScript(() => {
      const post = Worker.prototype.postMessage;
      Object.assign(window, { breakWorkers: false });
      Worker.prototype.postMessage = function (this: Worker, message: unknown) {
        if ((window as unknown as { breakWorkers: boolean }).breakWorkers)
          this.dispatchEvent(new ErrorEvent("error", { message: "out of memory" }));
        else post.call(this, message);
      };
    });
    const page = await open({ context });
    const at = parts(page);
    const before = await settledLadder(page);
    await page.evaluate(() => Object.assign(window, { breakWorkers: true }));
    await at.spacing.fill("7 m");
    await at.spacing.press("Enter");
    await at.answer.getByRole("alert").filter({ hasText: "out of memory" }).waitFor();
    expect(await at.answer.getAttribute("data-answer")).toBe("old");
    expect(await at.answer.getByText(/last good/i).count()).toBeGreaterThan(0);
    expect(await at.spacing.inputValue()).toBe("7.00 m");
    const after = await at.ladder.locator("tbody").textContent();
    expect(after).toContain(`${before[0]![1]}`);
    expect(page.url().startsWith(pageAddress)).toBe(true);
  },
);
