import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { journey, pageText } from "./journey.ts";

/** Counts whatever knocks at this machine's own door. */
let server: Server;
let door = "";
let knocks: string[] = [];
const folder = mkdtempSync(join(tmpdir(), "hindwire-"));

beforeAll(async () => {
  server = createServer((request, response) => {
    knocks.push(`${request.method} ${request.url}`);
    response.setHeader("access-control-allow-origin", "*");
    response.end("");
  });
  server.on("upgrade", (request, socket) => {
    knocks.push(`socket ${request.url}`);
    socket.destroy();
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  door = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});

afterAll(async () => {
  await new Promise((closed) => server.close(closed));
  rmSync(folder, { recursive: true });
});

/** Runs inside the page: tries the ways a page has of reaching a server. */
async function tryToGetOut(to: string): Promise<void> {
  const patiently = (work: Promise<unknown>) =>
    Promise.race([work.catch(() => undefined), new Promise((later) => setTimeout(later, 1000))]);
  const element = (name: string, attributes: Record<string, string>) => {
    const made = Object.assign(document.createElement(name), attributes);
    document.body.append(made);
    return new Promise((done) => {
      made.addEventListener("load", done);
      made.addEventListener("error", done);
    });
  };
  const fromWorker = (code: string) =>
    new Promise((done) => {
      const worker = new Worker(URL.createObjectURL(new Blob([`${code};postMessage(0)`])));
      worker.onmessage = done;
      worker.onerror = done;
    });
  await Promise.all(
    [
      () => fetch(`${to}fetch`),
      () =>
        new Promise((done) => {
          const request = new XMLHttpRequest();
          request.onloadend = done;
          request.open("GET", `${to}xhr`);
          request.send();
        }),
      async () => navigator.sendBeacon(`${to}beacon`, "x"),
      () =>
        new Promise((done) => {
          const socket = new WebSocket(`${to.replace("http", "ws")}socket`);
          socket.onerror = done;
        }),
      () =>
        new Promise((done) => {
          const events = new EventSource(`${to}events`);
          events.onerror = done;
        }),
      () => element("img", { src: `${to}image` }),
      () => element("script", { src: `${to}script` }),
      () => element("link", { rel: "stylesheet", href: `${to}style` }),
      () => element("link", { rel: "prefetch", href: `${to}prefetch` }),
      () => element("iframe", { src: `${to}frame` }),
      () => new FontFace("f", `url(${to}font)`).load(),
      () => fromWorker(`fetch("${to}worker-fetch").catch(() => 0)`),
      () => fromWorker(`try { importScripts("${to}worker-script") } catch {}`),
    ].map((attempt) =>
      patiently(
        (async () => {
          await attempt();
        })(),
      ),
    ),
  );
  await new Promise((later) => setTimeout(later, 300));
}

/** What knocked while the page of this text, opened from a disk, did its best to get out. */
async function knocksFrom(browser: Browser, text: string, name: string): Promise<string[]> {
  const file = join(folder, name);
  writeFileSync(file, text);
  const page = await browser.newPage();
  await page.goto(pathToFileURL(file).href);
  knocks = [];
  await page.evaluate(tryToGetOut, door);
  await page.close();
  return knocks;
}

journey("the page's policy keeps it from every server, even when it tries", async ({ browser }) => {
  expect(await knocksFrom(browser, pageText(), "hindwire.html")).toEqual([]);
});

journey("without the policy the same attempts would be seen", async ({ browser }) => {
  const open = pageText().replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, "");
  const seen = await knocksFrom(browser, open, "open.html");
  expect(seen.length).toBeGreaterThan(8);
});

journey("the file carries the licences of what it is made from", () => {
  for (const name of ["react-dom", "zustand", "mathjs", "d3-shape", "@fontsource-variable/atkinson-hyperlegible-next"])
    expect(pageText()).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+, (?:MIT|ISC|Apache-2\\.0|OFL-1\\.1)$`, "m"));
});
