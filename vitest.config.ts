import solid from "vite-plugin-solid";
import { defineConfig } from "vitest/config";

/** Screens need Solid's browser build; servers need Node's own builds. So the two run as two projects. */
export default defineConfig({
  test: {
    // All cores: with the default of one less, a machine of two runs one file at a time.
    maxWorkers: "100%",
    // The simulation lets devices come back with numbers that are taken, and Yjs says so thousands of times.
    onConsoleLog: (log) => (log.includes("[yjs] Changed the client-id") ? false : undefined),
    projects: [
      {
        test: {
          name: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**", "tests/client/!(device)/**", "**/node_modules/**"],
          testTimeout: 240_000,
        },
      },
      {
        plugins: [solid()],
        test: {
          name: "client",
          include: ["tests/client/!(device)/**/*.test.{ts,tsx}"],
          environment: "jsdom",
          // The screens take their texts when their code is loaded.
          setupFiles: ["tests/client/english.ts"],
          testTimeout: 60_000,
        },
      },
    ],
  },
});
