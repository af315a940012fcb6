// How src becomes dist: each sub-path an entry, code that several need in chunks, every file as ESM and as CommonJS.
import { defineConfig } from "tsup";
import { inlined, licencesOfInlined } from "./support/inlined.mjs";
import { fewChunks } from "./support/few-chunks.mjs";

export default defineConfig({
  entry: ["src/*.ts", "src/*/index.ts", "!src/data/**", "src/timing/temporal.ts"],
  format: ["esm", "cjs"],
  target: "es2022",
  dts: { compilerOptions: { ignoreDeprecations: "6.0", stripInternal: true } },
  splitting: true,
  sourcemap: true,
  clean: true,
  noExternal: inlined,
  esbuildPlugins: [fewChunks(), licencesOfInlined()],
});
