import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { encodePlanLink, withRadials } from "../../engine/index.ts";
import { launchBrowser } from "../support/launchBrowser.ts";
import { unpackBrowser } from "../support/unpackBrowser.ts";
import type { BenchRow } from "./BenchRow.ts";
import { benchPlan } from "./benchPlan.ts";

interface Watched {
  /** Milliseconds from the start of loading to the frame that first showed a pattern. */
  readonly firstPattern_ms: number | null;
  readonly frames_ms: number[];
  /** Frames in which the live curve of the elevation cut was another than in the frame before. */
  readonly patterns: number;
  /** Of these, drawn while the page called its figures full-wave. */
  readonly full: number;
  /** Frames in which the live curve of the azimuth cut was another. */
  readonly azimuths: number;
}

/** Runs in the page before its own script: notes each frame, and whether it showed a new pattern. */
function watchFrames(): void {
  const watched = {
    firstPattern_ms: null as number | null,
    frames_ms: [] as number[],
    patterns: 0,
    full: 0,
    azimuths: 0,
  };
  Object.assign(window, { watched });
  let shown = "";
  let around = "";
  const frame = (now_ms: number) => {
    watched.frames_ms.push(now_ms);
    const curve = document.querySelector("figure svg path.tr-live")?.getAttribute("d") ?? "";
    if (curve !== "" && curve !== shown) {
      watched.firstPattern_ms ??= performance.now();
      watched.patterns++;
      if (document.querySelector('.sureness__label[data-kind="full"]')) watched.full++;
      shown = curve;
    }
    const azimuth = document.querySelector(".sky-lower figure path.tr-live")?.getAttribute("d") ?? "";
    if (azimuth !== around) watched.azimuths++;
    around = azimuth;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
}

async function openPage(browser: Browser, hash = ""): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(watchFrames);
  await page.goto(pathToFileURL(resolve("dist/index.html")).href + hash);
  await page.waitForFunction(() => (window as unknown as { watched: Watched }).watched.firstPattern_ms !== null);
  return page;
}

const watchedIn = (page: Page) => page.evaluate(() => (window as unknown as { watched: Watched }).watched);

interface Drag {
  readonly perSecond: number;
  readonly patternsPerSecond: number;
  readonly fullPerSecond: number;
  readonly azimuthsPerSecond: number;
  /** The page's own thread: script, layout and paint, in time of the processor, which other programs cannot lengthen much. */
  readonly busyPerPattern_ms: number;
}

/** Two seconds with the reflector in the hand, moved faster than frames come. */
async function dragFor(page: Page, duration_ms: number): Promise<Drag> {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const busy_ms = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
  };
  const box = await page.getByRole("slider", { name: "Spacing of the reflector" }).boundingBox();
  if (!box) throw new Error("dragFor: no reflector on the page");
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + 10);
  const busyBefore_ms = await busy_ms();
  // One move a frame, made inside the page: an automated mouse waits for the page between moves and would be the slower.
  // Counted there as well, from the first move to the last: around them, while automation asks and answers, nothing moves.
  const counted = await page.evaluate(
    ([x0, y0, duration_ms]) =>
      new Promise<Omit<Drag, "busyPerPattern_ms"> & { readonly patterns: number }>((done) => {
        const { watched } = window as unknown as { watched: Watched };
        const handle = document.querySelector('[role="slider"][aria-label^="Spacing of the reflector"]')!;
        let first: { readonly now_ms: number; readonly before: Watched } | undefined;
        let i = 0;
        const frame = (now_ms: number) => {
          first ??= { now_ms, before: { ...watched } };
          // To and fro at an even pace, each way a third of a pixel beside the last: never twice the same place, whose
          // answer would be known already.
          const clientY = y0 + 10 + Math.abs((i % 80) - 40) + 0.37 * Math.floor(i / 40);
          i++;
          const move = { bubbles: true, pointerId: 1, pointerType: "mouse", isPrimary: true, buttons: 1 };
          handle.dispatchEvent(new PointerEvent("pointermove", { ...move, clientX: x0, clientY }));
          const seconds = (now_ms - first.now_ms) / 1000;
          if (1000 * seconds < duration_ms) return void requestAnimationFrame(frame);
          const patterns = watched.patterns - first.before.patterns;
          done({
            perSecond: (i - 1) / seconds,
            patternsPerSecond: patterns / seconds,
            fullPerSecond: (watched.full - first.before.full) / seconds,
            azimuthsPerSecond: (watched.azimuths - first.before.azimuths) / seconds,
            patterns,
          });
        };
        requestAnimationFrame(frame);
      }),
    [x, y, duration_ms] as const,
  );
  const busyAfter_ms = await busy_ms();
  await page.mouse.up();
  return { ...counted, busyPerPattern_ms: (busyAfter_ms - busyBefore_ms) / counted.patterns };
}

const dragCount = 3;

/**
 * Several drags, each of a page at rest: what the one before has set off (the full answer, sweeps across the band, how few
 * radials may lie) is done. In the first ones the browser still compiles, and a neighbour on the machine can only slow one
 * down: the best of them is the page's own.
 */
async function dragsOf(page: Page): Promise<Drag[]> {
  const drags: Drag[] = [];
  for (let i = 0; i < dragCount; i++) {
    await page.waitForTimeout(3000);
    drags.push(await dragFor(page, 2000));
  }
  return drags;
}

const best = (drags: readonly Drag[], what: Exclude<keyof Drag, "busyPerPattern_ms">) =>
  Math.max(...drags.map((drag) => drag[what]));

/** The built page in a real browser. A busy machine shows here first: read these rows when nothing else runs. */
export async function browserRows(): Promise<BenchRow[]> {
  const browser = await launchBrowser(await unpackBrowser());
  const remark = `Chromium ${browser.version()}, 1440 × 900`;
  const opened: number[] = [];
  for (let i = 0; i < 5; i++) {
    const page = await openPage(browser);
    opened.push((await watchedIn(page)).firstPattern_ms!);
    await page.close();
  }
  const page = await openPage(browser);
  const drags = await dragsOf(page);
  await page.close();
  const small = await openPage(browser, encodePlanLink(withRadials(benchPlan("full-wave"), { count: 4, length_m: 8 })));
  const smallDrags = await dragsOf(small);
  await browser.close();
  return [
    { name: "file opened to first pattern drawn", measured: Math.min(...opened), goal: 1000, unit: "ms", remark },
    {
      name: "drag the reflector: frames",
      measured: best(drags, "perSecond"),
      goal: 59,
      unit: "frames/s",
      atLeast: true,
      remark: `best of ${dragCount} drags of 2 s; a screen of 60 Hz`,
    },
    {
      name: "the same, the page’s first drag",
      measured: drags[0]!.perSecond,
      goal: 59,
      unit: "frames/s",
      atLeast: true,
      remark: "the browser compiles meanwhile",
    },
    {
      name: "drag the reflector: the page’s thread, for each new pattern",
      measured: Math.min(...drags.map((drag) => drag.busyPerPattern_ms)),
      goal: 12,
      unit: "ms",
    },
    {
      name: "drag the reflector: frames with a new pattern",
      measured: best(drags, "patternsPerSecond"),
      goal: 59,
      unit: "frames/s",
      atLeast: true,
    },
    {
      name: "drag the reflector: frames with a new azimuth cut",
      measured: best(drags, "azimuthsPerSecond"),
      goal: 59,
      unit: "frames/s",
      atLeast: true,
    },
    {
      name: "drag, 2 × 4 radials: frames with a new full-wave pattern",
      measured: best(smallDrags, "fullPerSecond"),
      goal: 59,
      unit: "frames/s",
      atLeast: true,
      remark: "no preview between",
    },
  ];
}
