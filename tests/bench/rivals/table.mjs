// The three jobs, every contender: a Markdown table with the date, Node and the machine. `node table.mjs [--write]` puts it
// into docs/guide/how-fast.md as well. A fresh process does each job for each contender.
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { contenders } from "./contenders.mjs";

const jobs = ["film", "joints", "wall"];
const page = path.join(import.meta.dirname, "../../../docs/guide/how-fast.md");
const [begin, end] = ["<!-- measured -->", "<!-- end of what was measured -->"];

/** @typedef {{ ratio: number, time: number, wrong: number, all: number }} Measured */

/** @param {string} contender @param {string} job @returns {Measured} */
function measured(contender, job) {
  const { stdout, stderr, status } = spawnSync(process.execPath, [path.join(import.meta.dirname, "measure.mjs"), contender, job], { encoding: "utf8" });
  if (status !== 0) throw new Error(`${contender}, ${job}: ${stderr}`);
  return JSON.parse(stdout);
}

/** @param {number} number */
const short = (number) => (number < 10 ? number.toFixed(1) : String(Math.round(number)));
/** @param {number} nanoseconds */
const microseconds = (nanoseconds) => `${(nanoseconds / 1000).toPrecision(2)} µs`;

const rows = Object.keys(contenders).map((contender) => {
  const results = jobs.map((job) => measured(contender, job));
  const cells = results.map(({ ratio, time }) => `${short(ratio)} (${time < 1000 ? `${Math.round(time)} ns` : time < 99500 ? microseconds(time) : `${Math.round(time / 1000)} µs`})`);
  const [wrong, all] = [results.reduce((sum, one) => sum + one.wrong, 0), results.reduce((sum, one) => sum + one.all, 0)];
  console.error(`${contender}: ${cells.join(", ")}`);
  return `| ${contender} | ${cells.join(" | ")} | ${wrong} of ${all} |`;
});

const [processor] = os.cpus();
const load = os.loadavg().map((one) => one.toFixed(1));
const table = [
  `Measured on ${new Date().toISOString().slice(0, 10)} with Node ${process.version} on ${os.cpus().length} cores (${processor?.model.trim() ?? "unknown"}, ${os.platform()}); load of the machine at the end, over 1, 5 and 15 minutes: ${load.join(", ")}.`,
  "",
  `| times plain numbers (time of one) | ${jobs.join(" | ")} | counts that are off |`,
  "|---|---|---|---|---|",
  ...rows,
].join("\n");
console.log(table);

if (process.argv.includes("--write")) {
  const text = readFileSync(page, "utf8");
  const [before, after] = [text.indexOf(begin), text.indexOf(end)];
  if (before < 0 || after < 0) throw new Error(`${page} has no place for the table`);
  writeFileSync(page, `${text.slice(0, before + begin.length)}\n\n${table}\n\n${text.slice(after)}`);
}
