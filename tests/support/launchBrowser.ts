import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/** The packaged browser brings its own libraries and fonts, beside it; any other needs nothing. */
function environmentFor(executablePath: string): Record<string, string> {
  const folder = dirname(executablePath);
  const libraries = join(folder, "al2023/lib");
  const inherited = Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined);
  if (!existsSync(libraries)) return Object.fromEntries(inherited);
  return {
    ...Object.fromEntries(inherited),
    LD_LIBRARY_PATH: [libraries, process.env.LD_LIBRARY_PATH].filter(Boolean).join(":"),
    FONTCONFIG_PATH: join(folder, "fonts"),
    XDG_CACHE_HOME: join(folder, "cache"),
  };
}

/**
 * Starts a browser with the security it has on anyone's desk: none of its checks is switched off but the process
 * sandbox, which cannot start as root in a container.
 *
 * @param executablePath from `unpackBrowser`; "" tries Chrome, then Edge, then Chromium as installed
 * @throws Error when no browser starts; it says what was tried and what to do
 */
export async function launchBrowser(executablePath: string): Promise<Browser> {
  if (executablePath)
    return chromium.launch({ executablePath, args: ["--no-sandbox"], env: environmentFor(executablePath) });
  const tried: string[] = [];
  for (const channel of ["chrome", "msedge", "chromium"]) {
    try {
      return await chromium.launch({ channel });
    } catch (error) {
      tried.push(`  ${channel}: ${String(error).split("\n")[0]}`);
    }
  }
  throw new Error(
    `No browser to test with. Install Chrome or Edge, or set BROWSER_PATH to a Chromium-based one. Tried:\n${tried.join("\n")}`,
  );
}
