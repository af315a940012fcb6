import path from "node:path";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: path.resolve(import.meta.dirname, ".."),
    include: ["tests/**/*.test.ts"],
    // Machines are shared and noisy: a limit is there to end what hangs, not to time what is slow.
    testTimeout: 180_000,
    typecheck: { enabled: true, include: ["tests/**/*.test-d.ts"], tsconfig: "tsconfig.json" },
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      reportsDirectory: "node_modules/.cache/coverage",
      reporter: ["text", "json-summary"],
    },
  },
});
