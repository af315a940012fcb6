// What importing one calculation costs an app, dependencies in, minified and gzipped; and that it brings that one alone.
import { build } from "esbuild";
import { gzipSync } from "node:zlib";
import { subPaths } from "./support/exports.mjs";

// The goal for a further one is 700; the names a bundler picks, which differ from folder to folder, weigh up to 15 more.
const limits = { one: 25_000, further: 715 };

/** @typedef {{ id: string, name: string, from: string, formula: boolean }} Found */

/** @type {Map<string, Found>} every calculation and composed function, by its id */
const found = new Map();
for (const subPath of Object.keys(subPaths()).filter((one) => one !== "." && one !== "./catalogue")) {
  const from = `settingbed/${subPath.slice(2)}`;
  for (const [name, value] of Object.entries(await import(from))) {
    if (typeof value === "function" && typeof value.id === "string") found.set(value.id, { id: value.id, name, from, formula: "definition" in value });
  }
}

/** @param {Found[]} calculations */
async function bundle(...calculations) {
  const contents = calculations.map(({ name, from }, index) => `export { ${name} as c${index} } from "${from}";`).join("\n");
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: import.meta.dirname },
    bundle: true, minify: true, format: "esm", platform: "browser", target: "es2022", write: false, logLevel: "error",
  });
  const [{ text, contents: bytes }] = /** @type {[import("esbuild").OutputFile]} */ (outputFiles);
  const wanted = calculations.map(({ id }) => id);
  // An id in a caution's text is no matter; an id that is a string by itself is a calculation's.
  const strays = [...found.keys()].filter((id) => !wanted.includes(id) && text.includes(`"${id}"`));
  // zod's code stands in a file of dist; every schema of it, and nothing else, has a part of this name.
  if (text.includes("_zod")) strays.push("zod");
  return { size: gzipSync(bytes, { level: 9 }).length, strays };
}

/** @param {string} label @param {number} size @param {number} limit @param {string[]} strays */
function report(label, size, limit, strays) {
  const faults = [...(size > limit ? ["TOO LARGE"] : []), ...(strays.length > 0 ? [`BRINGS ${strays.join(", ")}`] : [])];
  if (faults.length > 0) process.exitCode = 1;
  console.log(`${label.padEnd(48)}${String(size).padStart(7)} /${String(limit).padStart(6)}  ${faults.join("; ") || "ok"}`);
}

const calculations = [...found.values()].filter(({ formula }) => formula);
const first = calculations.find(({ id }) => id === "joints.coursed-face") ?? calculations[0];
if (first === undefined) {
  console.error("No calculation was found in dist: nothing was measured.");
  process.exitCode = 1;
} else {
  console.log("bytes, minified and gzipped, against the limit");
  const base = await bundle(first);
  report(`${first.id}, all dependencies in`, base.size, limits.one, base.strays);
  for (const further of calculations.filter((one) => one !== first)) {
    const { size, strays } = await bundle(first, further);
    report(`+ ${further.id}`, size - base.size, limits.further, strays);
  }
}
