// Packs the package and looks at it as a user gets it: publint, Are the Types Wrong, then, in a fresh folder that holds
// the package and its dependencies alone, every sub-path imported, required, and its types checked.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readPackage, subPaths } from "./support/exports.mjs";

const root = path.resolve(import.meta.dirname, "..");
const folder = mkdtempSync(path.join(tmpdir(), "settingbed-"));
const modules = path.join(folder, "node_modules");
const names = Object.keys(subPaths()).map((name) => path.posix.join("settingbed", name));

/** @param {string} command @param {string[]} args @param {string} cwd */
const run = (command, args, cwd = root) => execFileSync(command, args, { cwd, stdio: ["ignore", "inherit", "inherit"] });
/** @param {string} file the program's file under node_modules @param {string[]} args */
const tool = (file, ...args) => run(process.execPath, [path.join(root, "node_modules", file), ...args]);

try {
  run("npm", ["pack", "--ignore-scripts", "--silent", "--pack-destination", folder]);
  const tarball = path.join(folder, `settingbed-${readPackage().version}.tgz`);
  tool("publint/src/cli.js", tarball, "--strict");
  tool("@arethetypeswrong/cli/dist/index.js", tarball, "--format", "table-flipped");

  const installed = path.join(modules, "settingbed");
  mkdirSync(installed, { recursive: true });
  run("tar", ["-xzf", tarball, "-C", installed, "--strip-components=1"]);
  for (const name of withTheirs(Object.keys(readPackage().dependencies))) {
    cpSync(path.join(root, "node_modules", name), path.join(modules, name), { recursive: true, dereference: true });
  }

  writeFileSync(path.join(folder, "use.mjs"), useBoth(names));
  run(process.execPath, ["use.mjs"], folder);

  // Types, in an ES module and in a CommonJS one, with the declarations of the package and of its dependencies checked.
  const uses = names.map((name, index) => `import * as all${index} from "${name}";\nexport const keys${index}: string[] = Object.keys(all${index});`).join("\n");
  for (const ending of ["mts", "cts"]) writeFileSync(path.join(folder, `use.${ending}`), uses);
  const options = ["--ignoreConfig", "--noEmit", "--strict", "--target", "es2022", "--lib", "es2022,dom", "--module", "nodenext"];
  tool("typescript/bin/tsc", ...options, path.join(folder, "use.mts"), path.join(folder, "use.cts"));
  console.log(`${names.length} sub-paths of the packed package import, require and type-check.`);
} catch (error) {
  console.error(String(error));
  process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Packages, and those that they need in turn. @param {string[]} names @returns {Set<string>} */
function withTheirs(names) {
  const all = new Set(names);
  for (const name of all) {
    const { dependencies = {} } = JSON.parse(readFileSync(path.join(root, "node_modules", name, "package.json"), "utf8"));
    for (const needed of Object.keys(dependencies)) all.add(needed);
  }
  return all;
}

/** A program that imports and requires each name, and compares what they export. @param {string[]} names */
function useBoth(names) {
  return `import assert from "node:assert/strict";
import { createRequire } from "node:module";
const require = createRequire(import.meta.url);
for (const name of ${JSON.stringify(names)}) {
  const keys = Object.keys(await import(name)).sort();
  assert.deepEqual(Object.keys(require(name)).sort(), keys, name);
  assert.ok(keys.length > 0, name + " exports nothing");
}
`;
}
