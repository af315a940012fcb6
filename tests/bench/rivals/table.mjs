// The three jobs, every contender: a Markdown table with the date, Node and the machine. `node table.mjs [--write]` puts it
// into docs/guide/how-fast.md as well. A fresh process does each job for each contender.
import { spawnSync } from "node:child_process";
import path from "node:path";
import { machine, writeBetween } from "../report.mjs";
import { contenders } from "./contenders.mjs";

const jobs = ["film", "joints", "wall"];
const page = path.join(import.meta.dirname, "../../../docs/guide/how-fast.md");

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

const table = [
  machine(),
  "",
  `| times plain numbers (time of one) | ${jobs.join(" | ")} | counts that are off |`,
  "|---|---|---|---|---|",
  ...rows,
].join("\n");
console.log(table);

if (process.argv.includes("--write")) writeBetween(page, "<!-- measured -->", "<!-- end of what was measured -->", table);
