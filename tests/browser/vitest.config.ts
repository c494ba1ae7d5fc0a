import { defineConfig } from "vitest/config";

/** Real Chromium against a real server process: one file at a time, since two cores are all there may be. */
export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/browser/**/*.test.ts"],
    fileParallelism: false,
    testTimeout: 240_000,
    hookTimeout: 120_000,
  },
});
