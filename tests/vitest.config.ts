import path from "node:path";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: path.resolve(import.meta.dirname, ".."),
    include: ["tests/**/*.test.ts"],
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
