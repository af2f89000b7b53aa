import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import {
  baselineOf,
  encodePlanLink,
  type PlanReadout,
  readPlan,
  type SavedPlan,
  withRadials,
} from "../../engine/index.ts";
import { figure, signedFigure } from "../../src/charts/figure.ts";
import { demoPlan } from "../../src/store/demoPlan.ts";
import { readoutRequest } from "../../src/store/readoutRequest.ts";
import { okValue } from "../support/okValue.ts";
import { journey } from "./journey.ts";

const label = (page: Page) => page.locator(".sureness__label");
const full = (page: Page) => label(page).filter({ hasText: /^full-wave answer$/ });

/** The ladder as it stands on the page: angle, gained, front-to-back, worst. */
const ladder = (page: Page) =>
  page
    .getByRole("region", { name: "Ladder" })
    .locator("tbody tr")
    .evaluateAll((rows) =>
      rows.map((row) =>
        [row.querySelector("th"), ...[...row.querySelectorAll("td")].slice(-3)].map((cell) =>
          cell?.textContent?.replace("path", "").trim(),
        ),
      ),
    );

/** What the ladder has to say, asked of the engine directly. */
function ladderOf(plan: SavedPlan): (string | undefined)[][] {
  const request = readoutRequest(plan);
  const now: PlanReadout = okValue(readPlan(plan, request));
  const before = okValue(readPlan(baselineOf(plan)!.plan, request));
  return now.ladder
    .map((rung, i) => [
      `${rung.elevation_deg}°`,
      signedFigure(rung.forward_dBi - before.ladder[i]!.forward_dBi, 1),
      figure(rung.frontToBack_dB, 1),
      figure(rung.frontToRear_dB, 1),
    ])
    .toReversed();
}

describe("full-wave answers", { timeout: 120_000 }, () => {
  journey(
    "on opening, the full answer takes the preview's place within seconds, and the ladder says what the engine does",
    async ({ open }) => {
      const page = await open();
      await full(page).waitFor({ timeout: 30_000 });
      expect(demoPlan.soilModel).toBe("full-wave");
      expect(await ladder(page)).toEqual(ladderOf(demoPlan));
      expect(await ladder(page)).not.toEqual(
        ladderOf({
          ...demoPlan,
          soilModel: "screen",
          pins: demoPlan.pins!.map((pin) => ({ ...pin, plan: { ...pin.plan, soilModel: "screen" as const } })),
        }),
      );
    },
  );

  journey("during a drag the label says preview, and returns to full-wave when the hand is still", async ({ open }) => {
    // Fields so large that no machine keeps pace in full.
    const page = await open({ hash: encodePlanLink(withRadials(demoPlan, { count: 90, length_m: 5 })) });
    await full(page).waitFor({ timeout: 30_000 });
    const top = await page.locator(".rooms").evaluate((rooms) => rooms.getBoundingClientRect().top);
    const handle = page.getByRole("slider", { name: "Spacing of the reflector" });
    const box = (await handle.boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    const seen = new Set<string>();
    // Moved, then held still: what is read follows the answers at a pace.
    for (let i = 1; i <= 24; i++) {
      if (i <= 12) await page.mouse.move(box.x + box.width / 2 + i, box.y + box.height / 2);
      // In one look, or the state could change between two.
      const [state, words] = await page.evaluate(() => [
        document.querySelector<HTMLElement>(".headline")?.dataset.answer,
        document.querySelector(".sureness__label")?.textContent,
      ]);
      seen.add(`${state}: ${words}`);
      expect(await page.locator(".rooms").evaluate((rooms) => rooms.getBoundingClientRect().top)).toBe(top);
    }
    expect([...seen]).toContain("fresh: quick preview, full answer coming");
    await page.mouse.up();
    await full(page).waitFor({ timeout: 30_000 });
    expect(await page.locator(".rooms").evaluate((rooms) => rooms.getBoundingClientRect().top)).toBe(top);
    // A screen reader hears of the full answer and of no preview before it.
    await page
      .getByRole("status")
      .filter({ hasText: /^Full-wave answer\./ })
      .waitFor();
  });

  journey("a small field is dragged on the full answer alone", async ({ open }) => {
    const page = await open({ hash: encodePlanLink(withRadials(demoPlan, { count: 2, length_m: 2 })) });
    await full(page).waitFor({ timeout: 30_000 });
    const handle = page.getByRole("slider", { name: "Spacing of the reflector" });
    const box = (await handle.boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 5, box.y + box.height / 2);
    // Moved once a frame from inside the page, so that the plan is never still: every pattern is one of a moving plan.
    const seen = await page.evaluate(
      ([x, y]) =>
        new Promise<[string, number][]>((done) => {
          const handle = document.querySelector('[role="slider"][aria-label^="Spacing of the reflector"]')!;
          const patterns = new Map<string, Set<string>>();
          let i = 0;
          const frame = () => {
            const kind = document.querySelector(".sureness__label")?.getAttribute("data-kind") ?? "";
            const curve = document.querySelector("figure svg path.tr-live")?.getAttribute("d") ?? "";
            patterns.set(kind, (patterns.get(kind) ?? new Set()).add(curve));
            const move = { bubbles: true, pointerId: 1, pointerType: "mouse", isPrimary: true, buttons: 1 };
            handle.dispatchEvent(new PointerEvent("pointermove", { ...move, clientX: x + 5 + i / 3, clientY: y }));
            if (++i < 60) requestAnimationFrame(frame);
            else done([...patterns].map(([kind, curves]) => [kind, curves.size]));
          };
          requestAnimationFrame(frame);
        }),
      [box.x + box.width / 2, box.y + box.height / 2] as const,
    );
    await page.mouse.up();
    expect(new Map(seen).get("full") ?? 0).toBeGreaterThan(5);
  });

  journey("buried radials are answered in full, and the page says what the preview was off by", async ({ open }) => {
    const page = await open();
    await full(page).waitFor({ timeout: 30_000 });
    const before = await ladder(page);
    await page.getByLabel("how the radials lie").selectOption({ label: "slit in (5 cm deep)" });
    await full(page).waitFor({ timeout: 30_000 });
    await page.waitForFunction(() => document.querySelector(".headline")?.getAttribute("data-answer") === "fresh");
    expect(await ladder(page)).not.toEqual(before);
    await label(page).click();
    await page.getByText(/off by as much as this around your plan/).waitFor();
  });

  journey("raised radials have no preview: they are answered in full", async ({ open }) => {
    const page = await open();
    await full(page).waitFor({ timeout: 30_000 });
    const before = await ladder(page);
    await page.getByLabel("how the radials lie").selectOption({ label: "raised" });
    await full(page).waitFor({ timeout: 30_000 });
    await page.waitForFunction(() => document.querySelector(".headline")?.getAttribute("data-answer") === "fresh");
    expect(await ladder(page)).not.toEqual(before);
  });
});
