/// <reference types="vitest/config" />
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { singleFile } from "./tests/support/singleFile.ts";

export default defineConfig(({ isSsrBuild }) => ({
  plugins: [react(), singleFile()],
  worker: { format: "iife" },
  // Node takes a .js file below node_modules for CommonJS, and that is where the benchmarks are built.
  ...(isSsrBuild && { build: { rolldownOptions: { output: { entryFileNames: "[name].mjs" } } } }),
  test: {
    reporters: ["default", "./tests/support/plainTally.ts"],
    // By itself one core is kept free: on a machine of two all tests would then wait for each other.
    maxWorkers: "100%",
    projects: [
      {
        extends: true,
        test: {
          name: "engine",
          environment: "node",
          include: ["tests/{unit,published,property}/**/*.test.ts"],
        },
      },
      {
        extends: true,
        test: { name: "views", environment: "jsdom", include: ["tests/unit/**/*.test.tsx"] },
      },
      {
        extends: true,
        test: {
          name: "browser",
          environment: "node",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/setup.ts"],
          // One after the other, and after all else: they are about what a person sees, and when.
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          testTimeout: 120_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
}));
