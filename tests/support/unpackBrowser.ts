import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";

/** npm and vitest both run from the top of the project. */
const projectFolder = resolve(".");

/** The package's own file names folders under /tmp. Only the package's fonts, so that every machine draws alike. */
const fontConfiguration = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir prefix="relative">fonts</dir>
  <cachedir prefix="xdg">fonts-cache</cachedir>
</fontconfig>
`;

/** Runs `work` with some environment variables set, and puts every variable back afterwards. */
async function withEnvironment<T>(change: Record<string, string>, work: () => Promise<T>): Promise<T> {
  const before = { ...process.env };
  Object.assign(process.env, change);
  try {
    return await work();
  } finally {
    for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
    Object.assign(process.env, before);
  }
}

/**
 * Path of the browser for the tests: BROWSER_PATH if set; else the browser that comes with the npm packages, unpacked
 * on first use (Linux on x64 only); else "", which lets `launchBrowser` look for an installed one.
 *
 * The package unpacks into TMPDIR, whoever is at work there, and believes whatever it finds under its names. So it
 * gets a folder of its own, and the folder takes its final name in one step only when it is complete: two runs at
 * once cannot meet half a browser, nor can another version's be taken for this one's.
 */
export async function unpackBrowser(): Promise<string> {
  if (process.env.BROWSER_PATH) return process.env.BROWSER_PATH;
  if (process.platform !== "linux" || process.arch !== "x64") return "";
  // Read, not imported: the package does not export its package.json.
  const manifest = readFileSync(join(projectFolder, "node_modules/@sparticuz/chromium/package.json"), "utf8");
  const { version } = JSON.parse(manifest) as { version: string };
  const folder = join(projectFolder, `node_modules/.cache/chromium-${version}`);
  const executable = join(folder, "chromium");
  if (existsSync(executable)) return executable;

  const unfinished = `${folder}.${process.pid}`;
  mkdirSync(unfinished, { recursive: true });
  try {
    // The second variable makes the package unpack its own system libraries too, so that none need be installed.
    await withEnvironment({ TMPDIR: unfinished, AWS_LAMBDA_JS_RUNTIME: "nodejs20.x" }, async () => {
      const { default: chromium } = await import("@sparticuz/chromium");
      await chromium.executablePath();
    });
    writeFileSync(join(unfinished, "fonts/fonts.conf"), fontConfiguration);
    renameSync(unfinished, folder);
  } catch (error) {
    if (!existsSync(executable)) throw error; // else another run was quicker
  } finally {
    rmSync(unfinished, { recursive: true, force: true });
  }
  return executable;
}
