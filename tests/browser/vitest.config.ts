import path from "node:path";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: path.resolve(import.meta.dirname, "../.."),
    include: ["tests/browser/**/*.browser.ts"],
    testTimeout: 120_000,
    hookTimeout: 60_000,
    // One browser is enough for one machine.
    fileParallelism: false,
  },
});
