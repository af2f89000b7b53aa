import type { Page } from "playwright-core";
import { expect } from "vitest";
import { journey, pageAddress } from "./journey.ts";
import { settled } from "./parts.ts";

/** When each table in the browser's own database was put there, by its name. */
const shelved = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<[string, number][]>((done, fail) => {
        const opened = indexedDB.open("hindwire-kernels");
        opened.onerror = () => fail(opened.error);
        opened.onsuccess = () => {
          const db = opened.result;
          if (!db.objectStoreNames.contains("kernels")) return done([]);
          const all = db.transaction("kernels").objectStore("kernels").getAll();
          all.onsuccess = () => {
            done(all.result.map((row: { key: string; stored_ms: number }) => [row.key, row.stored_ms]));
            db.close();
          };
        };
      }),
  );

/** … once the sweeps, each of whose frequencies has a table of its own, put no more there for a while. */
async function shelvedAtRest(page: Page): Promise<[string, number][]> {
  for (let before = await shelved(page), still = 0; ; ) {
    await page.waitForTimeout(500);
    const now = await shelved(page);
    still = now.length > 0 && now.length === before.length ? still + 1 : 0;
    if (still === 4) return now;
    before = now;
  }
}

journey("the soil's tables are kept for the next visit, which builds none of them again", async ({ open, browser }) => {
  const context = await browser.newContext();
  const page = await open({ context });
  await settled(page);
  const first = await shelvedAtRest(page);
  expect(first.length).toBeGreaterThanOrEqual(5);
  await page.goto("about:blank");
  await page.goto(pageAddress);
  await settled(page);
  // A table built anew would have been put there anew.
  expect(await shelvedAtRest(page)).toEqual(first);
});
