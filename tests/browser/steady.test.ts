import type { Page } from "playwright-core";
import { expect } from "vitest";
import { journey } from "./journey.ts";
import { dragBy, parts, settled } from "./parts.ts";

/**
 * Starts to note when a box on screen jumps: layout shifts, those soon after an input too. Left out is what only makes
 * room for a longer figure (pieces of text, paragraphs, boxes that grow at one end) and what is itself a drawn figure:
 * the marks on the ladder's rungs.
 */
async function watchShifts(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const noted: string[] = [];
    Object.assign(window, { noted });
    type Source = { node?: Node; previousRect: DOMRectReadOnly; currentRect: DOMRectReadOnly };
    const where = (r: DOMRectReadOnly) => `${r.x},${r.y} ${r.width}×${r.height}`;
    const describe = ({ node, previousRect, currentRect }: Source) =>
      `${(node as Element).outerHTML.slice(0, 60)} from ${where(previousRect)} to ${where(currentRect)}`;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { value: number; sources: Source[] })[]) {
        const boxes = entry.sources.filter(
          ({ node, previousRect: from, currentRect: to }) =>
            node instanceof Element &&
            !node.closest("p, .ld-track") &&
            (from.y !== to.y || (from.left !== to.left && from.right !== to.right)),
        );
        if (boxes.length > 0) noted.push(`${entry.value.toFixed(4)}: ${boxes.map(describe).join("; ")}`);
      }
    }).observe({ type: "layout-shift", buffered: true });
  });
  return async () => {
    // Shifts are reported with the frame after the one that showed them.
    await page.waitForTimeout(200);
    return page.evaluate(() => (window as unknown as { noted: string[] }).noted);
  };
}

const windows = [
  { name: "1440 × 900", viewport: { width: 1440, height: 900 } },
  { name: "1280 × 720", viewport: { width: 1280, height: 720 } },
  { name: "390 × 844", viewport: { width: 390, height: 844 } },
] as const;

journey.for(windows)(
  "nothing jumps while the reflector and its tip are dragged: $name",
  async ({ viewport }, { open }) => {
    const page = await open({ viewport });
    await settled(page);
    const at = parts(page);
    const shifts = await watchShifts(page);
    const early = (await shifts()).length;
    for (const [handle, across, down] of [
      [at.reflectorOnPlan, -30, 30],
      [at.reflectorOnPlan, 20, -20],
      [at.reflectorTip, 0, -12],
    ] as const) {
      await handle.scrollIntoViewIfNeeded();
      await dragBy(page, handle, across, down, 25);
      await settled(page);
    }
    expect((await shifts()).slice(early)).toEqual([]);
  },
);

journey.for(windows)(
  "a caution that comes and goes in a drag moves nothing in the Yard: $name",
  async ({ viewport }, { open }) => {
    const page = await open({ viewport });
    await settled(page);
    const at = parts(page);
    await at.reflectorOnPlan.scrollIntoViewIfNeeded();
    await page.evaluate(() => {
      const tops = new Set<number>();
      const cautions = new Set<boolean>();
      Object.assign(window, { tops, cautions });
      const look = () => {
        tops.add(document.querySelector(".yard-made")!.getBoundingClientRect().top + scrollY);
        cautions.add(document.querySelector(".yard-caution") !== null);
        requestAnimationFrame(look);
      };
      look();
    });
    await dragBy(page, at.reflectorOnPlan, -40, 40, 12);
    await dragBy(page, at.reflectorOnPlan, 40, -40, 12);
    const [tops, cautions] = await page.evaluate(() => {
      const seen = window as unknown as { tops: Set<number>; cautions: Set<boolean> };
      return [[...seen.tops], [...seen.cautions]];
    });
    expect(cautions).toEqual(expect.arrayContaining([false, true]));
    expect(tops).toHaveLength(1);
  },
);

journey.for(windows)("nothing jumps while the page opens: $name", async ({ viewport }, { open }) => {
  const page = await open({ viewport });
  // A slow machine shows what a quick one hides: what comes late.
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 6 });
  await page.reload();
  await settled(page);
  expect(await (await watchShifts(page))()).toEqual([]);
});

journey("a jump would be noticed", async ({ open }) => {
  const page = await open();
  await settled(page);
  const shifts = await watchShifts(page);
  await page.evaluate(() => {
    const bar = document.createElement("div");
    bar.style.height = "60px";
    document.querySelector("main")!.prepend(bar);
  });
  await expect.poll(async () => (await shifts()).length).toBeGreaterThan(0);
});

journey.for(windows)("nothing runs off sideways: $name", async ({ viewport }, { open }) => {
  const page = await open({ viewport });
  await settled(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
});
