// The catalogue, written from the index of each topic: what can be called is listed by name, so that a bundler can leave
// it out. Run it (`npm run exports`); tests/cross/catalogue.test.ts fails when something is not listed.
import { build } from "esbuild";
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

const src = path.resolve(import.meta.dirname, "../../src");
const topics = readdirSync(src).filter((name) => existsSync(path.join(src, name, "index.ts")) && name !== "core").sort();

// The dependencies are found from a folder of the project.
const folder = mkdtempSync(path.resolve(import.meta.dirname, "../../node_modules/.catalogue-"));
await build({ entryPoints: topics.map((topic) => path.join(src, topic, "index.ts")), outdir: folder, outbase: src, outExtension: { ".js": ".mjs" }, bundle: true, format: "esm", platform: "node", packages: "external", logLevel: "error" });

/** @type {[string, string[]][]} */
const found = [];
for (const topic of topics) {
  const module = /** @type {Record<string, unknown>} */ (await import(pathToFileURL(path.join(folder, topic, "index.mjs")).href));
  const names = Object.keys(module).filter((name) => typeof module[name] === "function" && "id" in module[name] && String(module[name].id).startsWith(`${topic}.`));
  if (names.length > 0) found.push([topic, names.sort((a, b) => a.localeCompare(b, "en"))]);
}
rmSync(folder, { recursive: true });

/** @param {string[]} names */
function wrapped(names) {
  const lines = ["  "];
  for (const name of names) {
    const last = lines.at(-1) ?? "";
    if (last.length + name.length + 2 > 120) lines.push(`  ${name}, `);
    else lines[lines.length - 1] = `${last}${name}, `;
  }
  return lines.map((line) => line.trimEnd()).join("\n");
}

writeFileSync(path.join(src, "catalogue.ts"), `/**
 * Every calculation and composed function in one list: for tests, documentation and those who look for a name. An app
 * that imports one calculation does not carry it. The list is written by \`npm run exports\`.
 *
 * @packageDocumentation
 */
import type { AnyCallable } from "./core/callable.js";
${found.map(([topic, names]) => `import {\n${wrapped(names)}\n} from "./${topic}/index.js";`).join("\n")}

/** Everything that can be called, by topic. */
export const catalogue: readonly AnyCallable[] = /* @__PURE__ */ Object.freeze<AnyCallable[]>([
${found.map(([topic, names]) => `  // ${topic}\n${wrapped(names)}`).join("\n")}
]);
`);
console.log(`${String(found.reduce((total, [, names]) => total + names.length, 0))} in ${String(found.length)} topics`);
