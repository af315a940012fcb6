// Makes one file of a TypeScript entry, with the sources as they stand, and imports it.
import { mkdtempSync, rmSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const root = path.resolve(import.meta.dirname, "../..");

/**
 * @param {string} entry - a file below the project
 * @returns {Promise<string>} the address of the bundle
 */
export async function bundled(entry) {
  const folder = mkdtempSync(path.join(root, "node_modules", ".bundle-"));
  process.on("exit", () => {
    rmSync(folder, { recursive: true, force: true });
  });
  const outfile = path.join(folder, "bundle.mjs");
  await build({ entryPoints: [path.join(root, entry)], bundle: true, packages: "external", platform: "node", format: "esm", target: "es2022", outfile, logLevel: "error" });
  return pathToFileURL(outfile).href;
}
