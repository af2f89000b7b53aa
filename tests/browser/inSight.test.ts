import type { Locator } from "playwright-core";
import { expect } from "vitest";
import { journey } from "./journey.ts";
import { parts, settled } from "./parts.ts";

/** Whether all of something is in sight: inside the window and inside every box around it that scrolls. */
const isInSight = (what: Locator) =>
  what.evaluate((element) => {
    const box = element.getBoundingClientRect();
    for (let around = element.parentElement; around; around = around.parentElement) {
      const { overflowY } = getComputedStyle(around);
      if (overflowY !== "auto" && overflowY !== "scroll" && around !== document.documentElement) continue;
      const frame = around === document.documentElement ? new DOMRect(0, 0, innerWidth, innerHeight) : null;
      const { top, bottom } = frame ?? around.getBoundingClientRect();
      if (box.top < top || box.bottom > bottom) return false;
    }
    return box.height > 0;
  });

const always = ["spacing", "heading, true", "driven length", "reflector length"];
const windows = [
  { name: "1440 × 900", viewport: { width: 1440, height: 900 }, fields: [...always, "radials", "radial length"] },
  { name: "1280 × 720", viewport: { width: 1280, height: 720 }, fields: always },
] as const;

journey.for(windows)(
  "what is changed and what it does are in sight together, without scrolling: $name",
  async ({ viewport, fields }, { open }) => {
    const page = await open({ viewport });
    await settled(page);
    const { ladder, reflectorOnPlan, reflectorTip } = parts(page);
    const cut = (name: RegExp) => page.getByRole("figure").filter({ hasText: name }).getByRole("img");
    const wanted: [string, Locator][] = [
      ["ladder", ladder],
      ["reflector from above", reflectorOnPlan],
      ["reflector from the side", reflectorTip],
      ["elevation cut", cut(/^Elevation cut/)],
      ["azimuth cut", cut(/^Azimuth cut/)],
      ...fields.map((name): [string, Locator] => [name, page.getByRole("textbox", { name, exact: true })]),
      ...(viewport.height >= 900
        ? [["how the radials lie", page.getByLabel("how the radials lie")] as [string, Locator]]
        : []),
    ];
    const hidden: string[] = [];
    for (const [name, what] of wanted) if (!(await isInSight(what.first()))) hidden.push(name);
    expect(hidden).toEqual([]);
    // Reading must not be bought by what cannot be read: the half circle keeps a size.
    const box = await cut(/^Elevation cut/).boundingBox();
    expect(box?.height).toBeGreaterThan(120);
  },
);
