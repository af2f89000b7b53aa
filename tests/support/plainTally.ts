import type { Reporter, TestModule } from "vitest/node";

/**
 * Ends the output with one line that any build service can count: "12 passed, 0 failed, 1 skipped".
 * A file that could not be loaded counts as a failure, since none of its tests spoke.
 */
export default class PlainTally implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    let unloaded = 0;
    for (const module of modules) {
      if (module.errors().length > 0) unloaded++;
      for (const test of module.children.allTests()) count[test.result().state]++;
    }
    const { passed, failed, skipped, pending } = count;
    // Printed at exit, so that it stands below everything other reporters say.
    process.on("exit", () => {
      process.stdout.write(`${passed} passed, ${failed + unloaded} failed, ${skipped + pending} skipped\n`);
    });
  }
}
