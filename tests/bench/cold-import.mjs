// What importing a topic adds to an empty process, in milliseconds: medians of fresh processes, each name in turn so that
// other work on the machine falls on all alike; beside them decimal.js and zod alone. What is held is in tests/cold-start.mjs.
//
//   node tests/bench/cold-import.mjs [rounds]
import { spawnSync } from "node:child_process";
import path from "node:path";
import { subPaths } from "../support/exports.mjs";

const rounds = Number(process.argv[2] ?? 15);
const names = ["decimal.js", "zod", ...Object.keys(subPaths()).map((subPath) => path.posix.join("settingbed", subPath))];

/** @param {string} code @param {"module" | "commonjs"} type */
function once(code, type) {
  const program = `const start = performance.now(); ${code}; console.log(performance.now() - start)`;
  const { stdout } = spawnSync(process.execPath, [`--input-type=${type}`, "-e", program], { encoding: "utf8", cwd: new URL("../..", import.meta.url) });
  return Number(stdout);
}

/** @param {number[]} times */
const median = (times) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN;

const contenders = names.map((name) => ({ name, imports: /** @type {number[]} */ ([]), requires: /** @type {number[]} */ ([]) }));
const empty = { imports: /** @type {number[]} */ ([]), requires: /** @type {number[]} */ ([]) };
for (let round = 0; round < rounds; round += 1) {
  empty.imports.push(once("0", "module"));
  empty.requires.push(once("0", "commonjs"));
  for (const { name, imports, requires } of contenders) {
    imports.push(once(`await import("${name}")`, "module"));
    requires.push(once(`require("${name}")`, "commonjs"));
  }
}
console.log(`${"milliseconds over an empty process".padEnd(36)}import  require`);
for (const { name, imports, requires } of contenders) {
  const [imported, required] = [median(imports) - median(empty.imports), median(requires) - median(empty.requires)];
  console.log(`${name.padEnd(36)}${imported.toFixed(1).padStart(6)}${required.toFixed(1).padStart(9)}`);
}
