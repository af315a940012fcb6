// The package's sub-paths, told from src: each file of src itself and each folder with an index.ts, but not src/data.
// Run it (`npm run exports`) to write them into package.json; tests/exports.test.ts fails when they differ.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const root = path.resolve(import.meta.dirname, "../..");
const packageFile = path.join(root, "package.json");

/** @returns {Record<string, string>} each sub-path with its file under src or dist, without the ending */
export function subPaths() {
  const entries = readdirSync(path.join(root, "src"), { withFileTypes: true });
  const folders = entries.filter((one) => one.isDirectory() && one.name !== "data").map((one) => one.name);
  const topics = folders.filter((name) => existsSync(path.join(root, "src", name, "index.ts")));
  const files = entries.filter((one) => one.isFile() && one.name.endsWith(".ts")).map((one) => one.name.slice(0, -".ts".length));
  const named = [...files.filter((name) => name !== "index").map((name) => [name, name]), ...topics.map((name) => [name, `${name}/index`])];
  return Object.fromEntries([[".", "index"], ...named.sort().map(([name, file]) => [`./${name}`, file])]);
}

/** What package.json must say for these sub-paths, in ESM and CJS; typesVersions is for the resolution named node10. */
export function wanted(paths = subPaths()) {
  /** @param {string} file @param {string} types @param {string} code */
  const target = (file, types, code) => ({ types: `./dist/${file}${types}`, default: `./dist/${file}${code}` });
  const list = Object.entries(paths);
  return {
    exports: {
      ...Object.fromEntries(list.map(([name, file]) => [name, { import: target(file, ".d.ts", ".js"), require: target(file, ".d.cts", ".cjs") }])),
      "./package.json": "./package.json",
    },
    typesVersions: {
      "*": Object.fromEntries(list.filter(([name]) => name !== ".").map(([name, file]) => [name.slice(2), [`./dist/${file}.d.ts`]])),
    },
  };
}

/** @returns {{ version: string, dependencies: Record<string, string>, exports: unknown, typesVersions: unknown }} package.json as it stands */
export function readPackage() {
  return JSON.parse(readFileSync(packageFile, "utf8"));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(packageFile, `${JSON.stringify({ ...readPackage(), ...wanted() }, null, 2)}\n`);
  console.log(Object.keys(subPaths()).join("\n"));
}
