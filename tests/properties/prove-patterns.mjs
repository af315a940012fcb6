// Proves every regular expression of src linear with recheck, which is fetched into a temporary folder, and writes those
// that are into patterns.json. What it cannot prove is printed with the attack it found, and has to be written otherwise,
// or put under "bounded" by hand with the length of text that can reach it. Under "open" stand those still to be mended.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import { patternsOfSource } from "./patterns.mjs";

const file = path.join(import.meta.dirname, "patterns.json");
/** @type {{ linear: string[], bounded: Record<string, unknown>, open: Record<string, string> }} */
const known = JSON.parse(readFileSync(file, "utf8"));
const { patterns } = patternsOfSource();
const texts = [...new Set(patterns.map(({ text }) => text))].sort();
const folder = mkdtempSync(path.join(tmpdir(), "settingbed-recheck-"));

try {
  writeFileSync(path.join(folder, "package.json"), '{ "private": true }\n');
  execFileSync("npm", ["install", "--no-audit", "--no-fund", "--loglevel", "error", "recheck@4.5.0"], { cwd: folder, stdio: "inherit" });
  // Its part in plain JavaScript: nothing else needs to start.
  process.env.RECHECK_SYNC_BACKEND = "pure";
  /** @type {{ checkSync: (source: string, flags: string, options: object) => { status: string, complexity?: { summary: string }, attack?: { pattern: string }, error?: unknown } }} */
  const { checkSync } = createRequire(path.join(folder, "package.json"))("recheck");
  /** @type {string[]} */
  const linear = [];
  for (const text of texts) {
    const { source, flags, file: at, line } = patterns.find((one) => one.text === text) ?? { source: "", flags: "", file: "", line: 0 };
    if (known.linear.includes(text)) {
      linear.push(text);
      continue;
    }
    if (text in known.bounded || text in known.open) continue;
    const { status, complexity, attack, error } = checkSync(source, flags, { timeout: 60_000 });
    if (status === "safe") linear.push(text);
    else {
      console.error(`src/${at}:${String(line)} ${text} is ${status}: ${complexity?.summary ?? JSON.stringify(error)}${attack === undefined ? "" : `, as with ${attack.pattern}`}`);
      process.exitCode = 1;
    }
  }
  const [bounded, open] = [known.bounded, known.open].map((one) => Object.fromEntries(Object.entries(one).filter(([text]) => texts.includes(text))));
  writeFileSync(file, `${JSON.stringify({ linear, bounded, open }, null, 2)}\n`);
  console.log(`${String(linear.length)} patterns are linear, ${String(Object.keys(bounded ?? {}).length)} bounded, ${String(Object.keys(open ?? {}).length)} open.`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
