// What comes with the package: every package it needs, and those need, from what is installed.
//
//   node tests/api/licences.mjs            writes docs/licences.md
//   node tests/api/licences.mjs --check    fails where it differs, where a licence is not one of those below, or where a
//                                          package would run a script when it is installed
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { readPackage } from "../support/exports.mjs";
import { inlined } from "../support/inlined.mjs";

const root = path.resolve(import.meta.dirname, "../..");
const file = path.join(root, "docs/licences.md");
/** Licences that ask for no more than that their text goes along. */
const allowed = ["MIT", "ISC", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "0BSD"];

/** @typedef {{ name: string, version: string, license?: string, dependencies?: Record<string, string>, scripts?: Record<string, string> }} Told */

/** @type {Map<string, { told: Told, by: string[], text: string | undefined }>} */
const found = new Map();
const waiting = Object.keys(readPackage().dependencies).map((name) => ({ name, by: "settingbed" }));
for (const { name, by } of waiting) {
  const known = found.get(name);
  if (known !== undefined) {
    known.by.push(by);
    continue;
  }
  const folder = path.join(root, "node_modules", name);
  /** @type {Told} */
  const told = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8"));
  found.set(name, { told, by: [by], text: readdirSync(folder).find((one) => /^licen[cs]e/i.test(one)) });
  waiting.push(...Object.keys(told.dependencies ?? {}).map((needed) => ({ name: needed, by: name })));
}

const rows = [...found.values()].sort((a, b) => (a.told.name < b.told.name ? -1 : 1));
const runsScripts = rows.filter(({ told: { scripts = {} } }) => ["preinstall", "install", "postinstall"].some((one) => one in scripts));
const faults = [
  ...rows.filter(({ told: { license = "" } }) => !allowed.includes(license)).map(({ told }) => `${told.name}: its licence is ${told.license ?? "not told"}`),
  ...runsScripts.map(({ told }) => `${told.name} runs a script when it is installed`),
];
const table = rows.map(({ told, by, text }) => `| \`${told.name}\` | ${told.version} | ${told.license ?? ""} | ${text ?? "named in its package.json only"} | ${by.map((one) => `\`${one}\``).join(", ")} | ${inlined.includes(told.name) ? "yes" : "no"} |`);
const written = `# Licences

\`settingbed\` is under the MIT licence: see [LICENSE](../LICENSE). It needs these packages, and they nothing else; none runs a
script when it is installed. Code of some is in \`dist\`, so that a topic starts sooner, and there \`licences.txt\` has their
licences; they are named as dependencies all the same, for their types and for audits. Written by \`node tests/api/licences.mjs\` from what is
installed; the versions are those it was tested with.

| package | version | licence | text in the package | needed by | code in dist |
|---|---|---|---|---|---|
${table.join("\n")}
`;

if (process.argv.includes("--check")) {
  if (!existsSync(file) || readFileSync(file, "utf8") !== written) faults.push("docs/licences.md is not what is installed: run node tests/api/licences.mjs");
} else writeFileSync(file, written);
for (const one of faults) console.error(one);
if (faults.length > 0) process.exitCode = 1;
else console.log(`${String(rows.length)} packages, under ${[...new Set(rows.map(({ told }) => told.license))].sort().join(", ")}.`);
