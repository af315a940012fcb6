// Mutation testing: changes src one small place at a time, in memory, and sees whether a test of the folder notices.
//   npm run mutants -- joints timing          all mutants of these folders
//   npm run mutants -- joints --file drift    those of the files whose name has this in it
//   npm run mutants -- core --sample 800      so many, drawn by --seed (1 unless told)
//   npm run mutants -- joints --again         only those that survived last time
//   npm run mutants -- boards --quick         without test files that take over ten seconds; then --again with them
// Survivors are printed with their place; scores.md keeps the last score of each folder, equivalent.json those that change
// no answer, each with its reason.
import { fork } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { mutantsOf } from "./find.mjs";

/** @typedef {import("./mutant.mjs").Mutant} Mutant */
/** @typedef {{ readonly file: string, readonly within: string, readonly before: string, readonly after: string, readonly why: string }} Equivalent */
/** @typedef {{ status: "killed" | "survived" | "refused" | "hung" | "equivalent" | "invalid", by?: string, failure?: string, time?: number }} Verdict */

const root = path.resolve(import.meta.dirname, "../..");
/** Tests that hold a rule for every row of every definition. */
const forAll = ["tests/cross/shown-units.test.ts"];
/** Tests of other folders that look at a folder too. @type {Readonly<Record<string, readonly string[]>>} */
const besides = { core: ["units", "render"], shapes: ["boards"], "takeoff/rows": ["takeoff"] };
/** Folders within a folder that have a score of their own. */
const apart = ["takeoff/rows"];
/** Tests of types alone, which are gone when a mutant runs. */
const ofTypes = ["tests/core/compiler.test.ts"];
const { values: options, positionals: folders } = parseArgs({
  allowPositionals: true,
  options: { sample: { type: "string" }, seed: { type: "string", default: "1" }, file: { type: "string", default: "" }, again: { type: "boolean", default: false }, quick: { type: "boolean", default: false } },
});

/** How long a mutant may stay silent, in ms, before it counts as killed: it hangs. Before the first one, all files compile. */
const patience = options.quick ? 30_000 : 60_000;
const patienceAtFirst = 600_000;
/** A test file that takes longer, in ms, is left out. */
const longest = options.quick ? 10_000 : Infinity;

const equivalents = /** @type {readonly Equivalent[]} */ (JSON.parse(readFileSync(path.join(import.meta.dirname, "equivalent.json"), "utf8")));
const keyOf = (/** @type {{ file: string, within: string, before: string, after: string }} */ { file, within, before, after }) => [file, within, before, after].join("\n");
const reasons = new Map(equivalents.map((one) => [keyOf(one), one.why]));

/** @param {string} folder @param {RegExp} name @returns {string[]} */
const filesIn = (folder, name) => (existsSync(path.join(root, folder)) ? readdirSync(path.join(root, folder), { recursive: true, encoding: "utf8" }).filter((file) => name.test(file)).sort().map((file) => `${folder}/${file.replaceAll(path.sep, "/")}`) : []);

/** Draws so many of a list, the same ones for the same seed. @template T @param {readonly T[]} all @param {number} count @param {number} seed */
function drawn(all, count, seed) {
  let state = seed;
  const next = () => (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0) / 2 ** 32;
  return all.map((one, index) => ({ one, index, order: next() })).sort((a, b) => a.order - b.order).slice(0, count).sort((a, b) => a.index - b.index).map(({ one }) => one);
}

/** @type {import("node:child_process").ChildProcess | undefined} */
let running;
// A worker that is in an endless loop does not see that this process has gone.
for (const signal of /** @type {const} */ (["SIGINT", "SIGTERM"])) process.on(signal, () => {
  running?.kill("SIGKILL");
  process.exit(1);
});

/** @param {readonly string[]} tests @param {readonly Mutant[]} mutants @param {(id: string, verdict: Verdict) => void} judged @returns {Promise<void>} */
async function runAll(tests, mutants, judged) {
  let left = [...mutants];
  const tooLong = new Set();
  while (left.length > 0) {
    /** @type {string | undefined} */
    let begun;
    const done = new Set();
    const worker = fork(path.join(import.meta.dirname, "worker.mjs"), { execArgv: ["--max-old-space-size=1500"], stdio: ["ignore", "ignore", "inherit", "ipc"] });
    running = worker;
    let timer = setTimeout(() => worker.kill("SIGKILL"), patienceAtFirst);
    worker.send({ tests: tests.filter((file) => !tooLong.has(file)), mutants: left, longest });
    worker.on("message", (/** @type {any} */ message) => {
      clearTimeout(timer);
      if (message.kind === "begun") begun = message.id;
      timer = setTimeout(() => worker.kill("SIGKILL"), begun === undefined ? patienceAtFirst : patience);
      if (message.kind === "judged") {
        done.add(message.id);
        judged(message.id, message);
      }
      if (message.kind === "unchanged" && message.time >= longest) tooLong.add(message.file);
      if (message.kind === "unchanged" && message.time > 1000) console.log(`  ${message.file} takes ${(message.time / 1000).toFixed(1)} s`);
      if (message.kind === "left out") console.log(`  ${message.file} is left out: it waits at its top level, which cannot be done here`);
      if (message.kind === "failed") {
        console.error(message.why);
        process.exit(1);
      }
    });
    await new Promise((resolve) => worker.on("exit", resolve));
    clearTimeout(timer);
    left = left.filter(({ id }) => !done.has(id));
    if (left.length === 0) return;
    if (begun === undefined) throw new Error("The tests end the process, though nothing is changed.");
    judged(begun, { status: "hung" });
    left = left.filter(({ id }) => id !== begun);
  }
}

/** @param {string} folder */
async function runFolder(folder) {
  const files = [...filesIn(`src/${folder}`, /(?<!index)\.ts$/).filter((file) => !apart.some((inner) => inner !== folder && file.startsWith(`src/${inner}/`))), ...(existsSync(path.join(root, `src/data/${folder}.ts`)) ? [`src/data/${folder}.ts`] : [])];
  const tests = [...new Set([folder, ...(besides[folder] ?? [])].flatMap((one) => filesIn(`tests/${one}`, /\.test\.ts$/)).concat(forAll))].filter((file) => !ofTypes.includes(file));
  const whole = files.flatMap((file) => mutantsOf(file, readFileSync(path.join(root, file), "utf8"))).filter(({ file }) => file.includes(options.file));
  const all = options.sample === undefined ? whole : drawn(whole, Number(options.sample), Number(options.seed));
  const cache = path.join(root, "node_modules/.cache/mutants", `${folder.replace("/", "-")}.json`);
  /** @type {Map<string, Verdict>} */
  const verdicts = new Map(existsSync(cache) && options.again ? JSON.parse(readFileSync(cache, "utf8")) : []);
  for (const mutant of all) if (reasons.has(keyOf(mutant))) verdicts.set(keyOf(mutant), { status: "equivalent" });
  const toRun = all.filter((mutant) => {
    const known = verdicts.get(keyOf(mutant))?.status;
    return known === undefined || known === "survived" || (known === "equivalent" && !reasons.has(keyOf(mutant)));
  });
  const byId = new Map(toRun.map((mutant) => [mutant.id, mutant]));
  const begun = Date.now();
  let count = 0;
  const save = () => {
    mkdirSync(path.dirname(cache), { recursive: true });
    writeFileSync(cache, JSON.stringify([...verdicts]));
  };
  console.log(`${folder}: ${String(toRun.length)} mutants to run of ${String(whole.length)}, ${String(tests.length)} test files`);
  await runAll(tests, toRun, (id, verdict) => {
    const mutant = byId.get(id);
    if (mutant !== undefined) verdicts.set(keyOf(mutant), verdict);
    count += 1;
    if (count % 200 === 0) console.log(`  ${String(count)} after ${((Date.now() - begun) / 1000).toFixed(0)} s`);
    if (count % 50 === 0) save();
  });
  save();
  if (options.quick) console.log("  Files that take over ten seconds were left out.");
  const of = (/** @type {Verdict["status"]} */ status) => all.filter((mutant) => verdicts.get(keyOf(mutant))?.status === status);
  const [killed, survived, hung, refused, equivalent] = [of("killed").length, of("survived"), of("hung").length, of("refused").length, of("equivalent").length];
  for (const { file, line, within, before, after } of survived) console.log(`${file}:${String(line)} ${within}\n  - ${before}\n  + ${after}`);
  const noticed = killed + hung;
  for (const { file, line, before, after } of of("invalid")) console.log(`not to be read: ${file}:${String(line)}\n  - ${before}\n  + ${after}`);
  const score = (100 * noticed) / (noticed + survived.length);
  const before = keptRows().find((row) => row[0] === folder);
  const seedsBefore = (before?.[5] ?? "").split(", ").filter((seed) => seed !== "");
  const seeds = options.sample === undefined ? seedsBefore : [...new Set([...seedsBefore, options.seed])];
  // What a quick run of a fresh draw left over and the slow tests are asked about is the same fresh draw.
  const goesOn = options.again && !options.quick && before?.[3] === options.seed && before[4] === "yes" && before[6] === slowLeftOut;
  const fresh = options.sample === undefined ? "" : goesOn || !(options.again || seedsBefore.includes(options.seed)) ? "yes" : "no";
  const row = [
    folder, whole.length, all.length, options.sample === undefined ? "all" : options.seed, fresh, seeds.join(", "), options.quick ? slowLeftOut : "all",
    refused, equivalent, killed, hung, survived.length, `${score.toFixed(1)} %`, new Date().toISOString().slice(0, 10),
  ].map(String);
  console.log(`${folder}: ${score.toFixed(1)} % of ${String(noticed + survived.length)}; ${String(killed)} killed, ${String(hung)} hung, ${String(survived.length)} survived, ${String(equivalent)} equivalent, ${String(refused)} refused by the dimension check; ${((Date.now() - begun) / 1000).toFixed(0)} s`);
  const keys = new Set(whole.map(keyOf));
  for (const one of equivalents) if (files.includes(one.file) && one.file.includes(options.file) && !keys.has(keyOf(one))) console.log(`no such mutant any more: ${keyOf(one)}`);
  if (options.file === "") keepScore(row);
}

const slowLeftOut = "but the slow";
const head = ["folder", "mutants", "run", "seed", "fresh", "seeds drawn so far", "tests", "refused by the dimension check", "equivalent", "killed", "hung", "survived", "score", "date"];
const scores = path.join(import.meta.dirname, "scores.md");

/** The rows of scores.md, each as its cells. */
function keptRows() {
  const lines = existsSync(scores) ? readFileSync(scores, "utf8").split("\n").filter((line) => line.startsWith("| ")).slice(1) : [];
  return lines.map((line) => line.split("|").slice(1, -1).map((cell) => cell.trim()));
}

/** @param {readonly string[]} row */
function keepScore(row) {
  const line = (/** @type {readonly string[]} */ cells) => `| ${cells.join(" | ")} |`;
  const kept = [...keptRows().filter(([folder]) => folder !== row[0]), row].map(line).sort();
  const words = [
    "The score is killed and hung of those run, less the refused and the equivalent. `seed` is all where every mutant was run, else",
    "that of the draw; a draw is fresh where no seed alike was drawn before, so that no test was chosen by what",
    "survived of it: only a fresh one tells the score of the folder. Without the slow tests, those of over ten seconds, the score is a",
    "lower bound.",
  ];
  writeFileSync(scores, `# Scores of the last mutation tests\n\n${words.join("\n")}\n\n${line(head)}\n|${"---|".repeat(head.length)}\n${kept.join("\n")}\n`);
}

for (const folder of folders) await runFolder(folder);
