// What importing a topic adds to an empty process, in milliseconds: medians of fresh processes, each name in turn so that
// other work on the machine falls on all alike; beside them a package with nothing in it, decimal.js and zod. Where Node has a
// cache of compiled code (NODE_COMPILE_CACHE, from 22.1 on), imports with a warm one too. What is held is in tests/cold-start.mjs.
//
//   node tests/bench/cold-import.mjs [rounds] [--write]      --write puts the table into docs/guide/how-fast.md
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { subPaths } from "../support/exports.mjs";
import { machine, median, writeBetween } from "./report.mjs";

const { values: told, positionals: [times = "15"] } = parseArgs({ allowPositionals: true, options: { write: { type: "boolean", default: false } } });
const rounds = Number(times);
const root = path.resolve(import.meta.dirname, "../..");
const folder = mkdtempSync(path.join(root, "node_modules/.cold-"));
const empty = path.join(folder, "node_modules/empty");
mkdirSync(empty, { recursive: true });
writeFileSync(path.join(empty, "package.json"), JSON.stringify({ name: "empty", type: "module", exports: "./index.js" }));
writeFileSync(path.join(empty, "index.js"), "export {};\n");
symlinkSync(root, path.join(folder, "node_modules/settingbed"));

const names = ["empty", "decimal.js", "zod", ...Object.keys(subPaths()).map((subPath) => path.posix.join("settingbed", subPath))];
const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
/** The ways of starting, each with its environment. @type {readonly (readonly [string, "module" | "commonjs", Record<string, string>])[]} */
const ways = [
  ["import", "module", {}],
  ["require", "commonjs", {}],
  ...(major > 22 || (major === 22 && minor >= 1) ? [/** @type {const} */ (["import, with a cache of compiled code", "module", { NODE_COMPILE_CACHE: path.join(folder, "cache") }])] : []),
];

/** @param {string} code @param {string} type @param {Record<string, string>} env */
function once(code, type, env) {
  const program = `const start = performance.now(); ${code}; console.log(performance.now() - start)`;
  const { stdout, stderr, status } = spawnSync(process.execPath, [`--input-type=${type}`, "-e", program], { encoding: "utf8", cwd: folder, env: { ...process.env, ...env } });
  if (status !== 0) throw new Error(`${code}: ${stderr}`);
  return Number(stdout);
}

/** @type {Map<string, number[]>} */
const measured = new Map();
/** @param {string} key @param {number} time */
const note = (key, time) => void measured.set(key, [...(measured.get(key) ?? []), time]);
for (let round = 0; round < rounds; round += 1) {
  for (const [way, type, env] of ways) {
    note(way, once("0", type, env));
    for (const name of names) note(`${way} ${name}`, once(type === "module" ? `await import("${name}")` : `require("${name}")`, type, env));
  }
}
rmSync(folder, { recursive: true });

/** @param {string} key */
const medianOf = (key) => median(measured.get(key) ?? []);
const table = [
  machine(),
  "",
  `| milliseconds over an empty process | ${ways.map(([way]) => way).join(" | ")} |`,
  `|---|${ways.map(() => "---").join("|")}|`,
  ...names.map((name) => `| ${name === "empty" ? "a package with nothing in it" : `\`${name}\``} | ${ways.map(([way]) => (medianOf(`${way} ${name}`) - medianOf(way)).toFixed(1)).join(" | ")} |`),
].join("\n");
console.log(table);
if (told.write) writeBetween(path.join(root, "docs/guide/how-fast.md"), "<!-- measured: start -->", "<!-- end of the start that was measured -->", table);
