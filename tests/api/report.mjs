// What a user can reach, as text: of every entry each public name with its type, from the declarations that the build
// writes. A name that comes, goes or changes shows in review as a line of tests/api/<entry>.txt.
//
//   node tests/api/report.mjs            writes the files
//   node tests/api/report.mjs --check    fails where they differ, and says what changed
//   --dist <folder> --to <folder>        reads another build than dist, writes or checks another folder than this
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { subPaths } from "../support/exports.mjs";
import { entryReports } from "./entry-report.mjs";

const { values: told } = parseArgs({ options: { check: { type: "boolean", default: false }, dist: { type: "string" }, to: { type: "string" } } });
const dist = path.resolve(told.dist ?? path.join(import.meta.dirname, "../../dist"));
const here = path.resolve(told.to ?? import.meta.dirname);

const declarations = Object.values(subPaths()).map((file) => path.join(dist, `${file}.d.ts`));
const missing = declarations.filter((file) => !existsSync(file));
if (missing.length > 0) {
  console.error(`There is no ${missing.join(", ")}: build first (npm run build).`);
  process.exit(1);
}

const reports = entryReports(subPaths(), dist);
const stale = readdirSync(here).filter((file) => file.endsWith(".txt") && !reports.has(file));

if (told.check) {
  const changes = [...reports].flatMap(([file, text]) => changed(file, read(file), text));
  for (const line of [...changes, ...stale.map((file) => `${file}: its entry is gone`)]) console.error(line);
  if (changes.length + stale.length > 0) {
    console.error("What is public has changed. If that is meant: node tests/api/report.mjs, and tell it in CHANGELOG.");
    process.exitCode = 1;
  } else {
    console.log(`${reports.size} entries show what tests/api says.`);
  }
} else {
  for (const [file, text] of reports) writeFileSync(path.join(here, file), text);
  for (const file of stale) rmSync(path.join(here, file));
  console.log(`${reports.size} entries written.`);
}

/** @param {string} file */
function read(file) {
  const at = path.join(here, file);
  return existsSync(at) ? readFileSync(at, "utf8") : "";
}

/** The lines that went and came, each with the names it stands under. @param {string} file @param {string} before @param {string} after */
function changed(file, before, after) {
  if (before === after) return [];
  const [old, now] = [linesOf(before), linesOf(after)];
  const gone = old.filter((line) => !now.includes(line)).map((line) => `${file}: - ${line}`);
  const come = now.filter((line) => !old.includes(line)).map((line) => `${file}: + ${line}`);
  return gone.length + come.length === 0 ? [`${file}: the order of its lines`] : [...gone, ...come];
}

/** Every line after those that it is set in under. @param {string} text @returns {string[]} */
function linesOf(text) {
  /** @type {string[]} */
  const above = [];
  return text.split("\n").filter((line) => line.trim() !== "").map((line) => {
    const depth = (line.length - line.trimStart().length) / 2;
    above.splice(depth, above.length, line.trim());
    return above.join(" > ");
  });
}
