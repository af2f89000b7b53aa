import { expect } from "vitest";
import { journey } from "./journey.ts";
import { parts, settledLadder } from "./parts.ts";

journey("on a phone a finger drags the reflector, and the page stays where it is", async ({ open }) => {
  const page = await open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  const at = parts(page);
  const before = await settledLadder(page);
  await at.reflectorOnPlan.scrollIntoViewIfNeeded();
  const scrolled = await page.evaluate(() => scrollY);
  const box = (await at.reflectorOnPlan.boundingBox())!;
  expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);

  const session = await page.context().newCDPSession(page);
  const finger = (type: "touchStart" | "touchMove" | "touchEnd", x: number, y: number) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x, y }] });
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await finger("touchStart", x, y);
  // Upwards: there is more page below, so that it would scroll if it could.
  for (let i = 1; i <= 8; i++) await finger("touchMove", x + 3 * i, y - 5 * i);
  await finger("touchEnd", x, y);

  expect(await page.evaluate(() => scrollY)).toBe(scrolled);
  expect(await settledLadder(page)).not.toEqual(before);
  await at.undo.click();
  expect(await settledLadder(page)).toEqual(before);
});
